#include "documents/shop.h"
#include "documents/signature.h"
#include "model/delivery_check.h"
#include "model/free_path.h"
#include "model/guarded.h"
#include "model/label_picture.h"
#include "model/words.h"
#include "storage/document_file.h"
#include "store/deliveries.h"
#include "store/shops.h"
#include "store/signing_key.h"

// What comes to the crew lead as a file, and what leaves as one.
namespace lapwright::field {

bool DeliveryCheck::openFile(const QString& path)
{
    const auto text = storage::readDocument(kept(path));
    if (!text.ok()) {
        emit failed(field::shown(text.errors().front().sentence()));
        return false;
    }
    const auto read = documents::readLoad(*text);
    if (!read.ok()) {
        emit failed(tr("This is no load list: %1").arg(field::shown(read.errors().front().sentence())));
        return false;
    }
    return guarded(*this, [&] {
        const store::Connection& database = tablet_.database();
        if (!store::keepLoad(database, read->value, *text, tablet_.now()) && !standIn(read->value, *text))
            return false;
        setLoad(exact(read->value.id));
        emit acted();
        return true;
    });
}

/// The same list under a good signature takes the place of the one that is kept; so does a good list that of
/// one that never counted.
bool DeliveryCheck::standIn(const schedule::Load& load, const std::string& text)
{
    const store::Connection& database = tablet_.database();
    const std::string kept = store::loadText(database, load.id).value_or("");
    const auto here = documents::readLoad(kept);
    const bool same = here.ok() && here->value == load;
    const bool good = trustIn(database, text).standing == LoadTrust::Standing::Good;
    const bool counts = store::isAccepted(database, load.id) || !store::eventsOf(database, load.id).empty() ||
                        trustIn(database, kept).standing != LoadTrust::Standing::Doubtful;
    if (!same && (counts || !good)) {
        emit failed(tr("Another list of this load is here already, and that one counts. Ask the shop."));
        return false;
    }
    if (good)
        store::replaceLoad(database, load, text);
    return true;
}

void DeliveryCheck::readTrust(const std::string& text)
{
    trust_ =
        store::isAccepted(tablet_.database(), load_.id) ? LoadTrust() : trustIn(tablet_.database(), text);
}

bool DeliveryCheck::trustSigner()
{
    return guarded(*this, [&] {
        if (trust_.key.empty())
            return false;
        if (!settings_.trustShop(trust_.key))
            return false;
        setLoad(load());
        return true;
    });
}

bool DeliveryCheck::acceptList()
{
    return guarded(*this, [&] {
        store::acceptLoad(tablet_.database(), load_.id, tablet_.now());
        setLoad(load());
        emit acted();
    });
}

bool DeliveryCheck::mayCount()
{
    if (isQuestioned())
        emit failed(tr("Say first whether this load list counts."));
    return !isQuestioned();
}

bool DeliveryCheck::mergeFile(const QString& path)
{
    const auto text = storage::readDocument(kept(path));
    const auto read = text.ok() ? documents::readReceipt(*text)
                                : Result<documents::Document<schedule::Receipt>>(text.errors());
    if (!read.ok()) {
        emit failed(tr("This is no receipt: %1").arg(field::shown(read.errors().front().sentence())));
        return false;
    }
    return guarded(*this, [&] {
        if (!store::loadText(tablet_.database(), read->value.load)) {
            emit failed(
                tr("This receipt is of a load that is not on this tablet. Open its load list first."));
            return false;
        }
        setLoad(exact(read->value.load));
        if (!mayCount())
            return false;
        store::addEvents(tablet_.database(), read->value.load, read->value.events);
        readEvents();
        emit acted();
        return true;
    });
}

int DeliveryCheck::rowOnPicture(const QString& path)
{
    const auto code = labelOn(path);
    if (!code.ok()) {
        emit failed(field::shown(code.errors().front().sentence()));
        return -1;
    }
    return rowOf(*code);
}

int DeliveryCheck::rowSeen(const QImage& seen)
{
    const auto code = labelOn(seen);
    return code ? rowOf(*code) : -1;
}

QString DeliveryCheck::writeReceipt(const QString& folder)
{
    return guarded(*this, [&]() -> QString {
        // One tablet writes one receipt of a load; sent again it has grown, and its events count once.
        const schedule::Receipt receipt{tablet_.newId(), load_.id,
                                        store::eventsOf(tablet_.database(), load_.id)};
        if (receipt.events.empty()) {
            emit failed(tr("Nothing is counted yet."));
            return {};
        }
        QString path = freePath(folder, "receipt-" + fileStamp(tablet_.now()), ".json",
                                [](const std::string&) { return false; });
        const auto text = documents::signDocument(documents::writeReceipt({receipt, {}}),
                                                  store::signingKey(tablet_.database()));
        const auto written =
            text.ok() ? storage::writeDocument(kept(path), *text) : Result<bool>(text.errors());
        if (!written.ok()) {
            emit failed(field::shown(written.errors().front().sentence()));
            return {};
        }
        store::markSent(tablet_.database(), load_.id);
        settings_.setFolder(folder);
        readEvents();
        emit acted();
        return path;
    });
}

} // namespace lapwright::field
