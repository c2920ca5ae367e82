// Any job that can be read is taken off in bounded time, and its pieces pass the checker or a finding says
// why not.
#include "documents/catalogue.h"
#include "documents/job.h"
#include "documents/order.h"
#include "must.h"
#include "pieces/takeoff.h"
#include "source_directory.h"

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

using namespace lapwright;

namespace {

pieces::Catalogue shipped()
{
    documents::CatalogueBuilder builder;
    for (const char* folder : {"metal-library", "trim-library", "rule-sets"})
        for (const auto& entry :
             std::filesystem::directory_iterator(sourceDirectory() + "/shared-core/" + folder)) {
            std::ifstream file(entry.path());
            builder.add(entry.path().filename().string(), std::string(std::istreambuf_iterator(file), {}));
        }
    return builder.build().value();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const pieces::Catalogue catalogue = shipped();
    const auto job = documents::readJob({reinterpret_cast<const char*>(data), size});
    if (!job.ok())
        return 0;
    documents::OrderDocument order{pieces::takeoff(job->value, catalogue), {}};
    order.value.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e22";
    const auto back = documents::readOrder(documents::writeOrder(order));
    must(back.ok(), "an order that was made can be read");
    must(back->value.pieces == order.value.pieces, "with the same pieces");
    return 0;
}
