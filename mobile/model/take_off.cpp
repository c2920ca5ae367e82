#include "model/take_off.h"

#include "documents/entered.h"
#include "pieces/checker.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace lapwright::field {

TakeOff::TakeOff(const Tablet& tablet, JobEditor& editor, QObject* parent)
    : QObject(parent), tablet_(tablet), editor_(editor)
{
    connect(&editor, &JobEditor::jobChanged, this, &TakeOff::forget);
}

void TakeOff::forget()
{
    made_ = false;
    emit stale();
}

const site::Acknowledgement* TakeOff::acknowledgementOf(const rules::Finding& finding) const
{
    const auto& given = editor_.job().acknowledgements;
    const auto found = std::find_if(given.begin(), given.end(), [&finding](const site::Acknowledgement& one) {
        return one.code == finding.code && one.place == finding.place;
    });
    return found == given.end() ? nullptr : &*found;
}

const documents::OrderDocument& TakeOff::document()
{
    if (!made_)
        make();
    return document_;
}

const std::optional<documents::OrderDocument>& TakeOff::sent()
{
    if (!made_)
        make();
    return sent_;
}

bool TakeOff::isSent()
{
    return sent() && sent()->value.revision == document().value.revision;
}

void TakeOff::make()
{
    const documents::JobDocument& job = editor_.document();
    document_ = {pieces::takeoff(job.value, tablet_.catalogue()), {}};
    pieces::Order& order = document_.value;
    rules::Findings more = documents::enteredThatDiffer(job.value);
    rules::Findings wrong = pieces::checkPieces(order, tablet_.catalogue());
    std::move(more.begin(), more.end(), std::back_inserter(order.findings));
    std::move(wrong.begin(), wrong.end(), std::back_inserter(order.findings));
    order.id = job.value.id;
    if (!job.extras.empty())
        document_.extras.inside["job"] = job.extras;

    sent_.reset();
    if (const auto last = store::lastSent(tablet_.database(), job.value.id)) {
        auto read = documents::readOrder(last->document);
        if (!read.ok())
            throw store::StoreFailure(read.errors().front().sentence());
        sent_ = *std::move(read);
        order.revision = sent_->value.revision;
        order.previousHash = sent_->value.previousHash;
        if (documents::revisionHash(document_) != last->hash) {
            order.revision = sent_->value.revision + 1;
            order.previousHash = last->hash;
        }
    }
    made_ = true;
}

} // namespace lapwright::field
