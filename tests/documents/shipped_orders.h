#pragma once

#include "document_texts.h"
#include "documents/catalogue.h"
#include "documents/job.h"
#include "documents/order.h"
#include "pieces/takeoff.h"

/// Orders taken off with the shipped data.
namespace texts {

inline lapwright::pieces::Catalogue shippedCatalogue()
{
    lapwright::documents::CatalogueBuilder builder;
    for (const char* folder : {"metal-library", "trim-library", "rule-sets"})
        for (const Text& text : ofFolder(folder))
            builder.add(text.file, text.text);
    return builder.build().value();
}

inline lapwright::documents::OrderDocument orderOf(const lapwright::site::Job& job,
                                                   const lapwright::pieces::Catalogue& catalogue)
{
    lapwright::documents::OrderDocument order;
    order.value = lapwright::pieces::takeoff(job, catalogue);
    order.value.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e22";
    return order;
}

} // namespace texts
