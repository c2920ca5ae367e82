#include "arrivals.h"

#include "acts/arrivals.h"
#include "acts/incoming.h"
#include "acts/last_done.h"
#include "acts/words.h"
#include "arrival_list.h"
#include "shop.h"
#include "storage/document_file.h"
#include "storage/orders.h"
#include "text.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>

#include <algorithm>
#include <map>
#include <utility>

namespace lapwright::model {

namespace {

/// How often the watched folder is looked into, milliseconds.
constexpr int lookEvery = 1000;

/// Milliseconds without a key before the history is looked through: what is listed already is found at once.
constexpr int pauseOfTyping = 150;

const QString waitingPrefix = QStringLiteral("waiting/");

QString rowOf(const std::string& hash)
{
    return waitingPrefix + exact(hash);
}

rules::Findings reasonsOf(const storage::WaitingOrder& order)
{
    rules::Findings findings;
    for (const std::string& reason : order.reasons) {
        rules::Finding finding;
        finding.weight = rules::Weight::Blocks;
        finding.code = "arrival.waits";
        finding.statement = Phrase{"Waits for a person: {reason}.", {{"reason", reason}}};
        findings.push_back(finding);
    }
    return findings;
}

} // namespace

Arrivals::Arrivals(Shop& shop) : Desk(shop), atHand_(shop), preview_(new OrderPreview(shop))
{
    look_.setInterval(lookEvery);
    connect(&look_, &QTimer::timeout, this, &Arrivals::lookIntoFolder);
    connect(&nudge_, &QFileSystemWatcher::directoryChanged, this, &Arrivals::lookIntoFolder);
    connect(shop.preferences(), &Preferences::changed, this, &Arrivals::watchFolder);
    search_.setSingleShot(true);
    search_.setInterval(pauseOfTyping);
    connect(&orders_, &RowsModel::searchChanged, &search_, QOverload<>::of(&QTimer::start));
    connect(&search_, &QTimer::timeout, this, &Arrivals::searchHistory);
    watchFolder();
}

void Arrivals::reload()
{
    readStanding();
    showOrders();
    if (orders_.indexOf(current_) < 0)
        current_ = orders_.idAt(0);
    showPreview();
    emit waitingChanged();
}

void Arrivals::readStanding()
{
    waiting_ = waitingOrders(shop().database());
    standing_.clear();
    for (const storage::WaitingOrder& order : waiting_) {
        const auto here = storage::orderRow(shop().database(), order.order);
        Row row;
        row.id = rowOf(order.hash);
        row.title = shown(here ? here->order.jobName : order.order);
        row.detail = tr("revision %1 waits for a person").arg(order.revision);
        row.trailing = timeWords(order.receivedAt);
        row.sign = QStringLiteral("hold");
        row.weight = static_cast<int>(rules::Weight::Blocks);
        standing_.append(row);
    }
    for (const storage::OrderRow& order : openOrders(shop().database()))
        standing_.append(orderRow(order));
}

void Arrivals::searchHistory()
{
    search_.stop();
    shop().attempt([this] { showOrders(); });
}

void Arrivals::showOrders()
{
    QList<Row> rows = standing_;
    std::map<QString, qsizetype> listed;
    for (qsizetype at = 0; at < rows.size(); ++at)
        listed.emplace(rows[at].id, at);
    // What left long ago is only looked for when somebody searches; what is listed may be found by a mark.
    for (const storage::OrderRow& order : searched(shop().database(), orders_.search())) {
        const auto [at, isNew] = listed.emplace(exact(order.order.id), rows.size());
        if (isNew)
            rows.append(orderRow(order));
        rows[at->second].also = orders_.search();
    }
    orders_.setRows(rows);
}

void Arrivals::setCurrent(const QString& id)
{
    if (id == current_)
        return;
    current_ = id;
    shop().attempt([this] { showPreview(); });
}

bool Arrivals::currentWaits() const
{
    return current_.startsWith(waitingPrefix);
}

const storage::WaitingOrder* Arrivals::currentWaiting() const
{
    const auto found =
        std::find_if(waiting_.begin(), waiting_.end(),
                     [this](const storage::WaitingOrder& order) { return rowOf(order.hash) == current_; });
    return found == waiting_.end() ? nullptr : &*found;
}

void Arrivals::showPreview()
{
    currentHeld_ = false;
    if (const storage::WaitingOrder* waits = currentWaiting()) {
        showWaiting(*waits);
    } else if (!current_.isEmpty() && !currentWaits()) {
        showKept(current_.toStdString());
    } else {
        preview_->clear();
    }
    emit currentChanged();
}

void Arrivals::showWaiting(const storage::WaitingOrder& waits)
{
    if (preview_->orderId() != waits.order)
        preview_->clear(); // what cannot be read is not taken for the one before
    const auto derived = atHand_.waiting(waits.hash);
    if (!derived)
        return preview_->clear();
    rules::Findings told = reasonsOf(waits);
    told.insert(told.end(), derived->differences.begin(), derived->differences.end());
    preview_->show({derived, &derived->order}, told);
}

void Arrivals::showKept(const std::string& order)
{
    if (preview_->orderId() != order)
        preview_->clear();
    const auto kept = atHand_.kept(order);
    const auto here = storage::orderRow(shop().database(), order);
    currentHeld_ = here && here->order.held;
    preview_->show({kept, &kept->order}, {}, acts::lastDone(shop().database(), order));
}

void Arrivals::takeFiles(const QList<QUrl>& files)
{
    if (!shop().letsPlan())
        return;
    QStringList paths;
    for (const QUrl& file : files)
        paths.append(file.isLocalFile() ? file.toLocalFile() : file.toString());
    (void)takeAll(paths, Source::Person);
}

bool Arrivals::takeAll(const QStringList& paths, Source source)
{
    QStringList said;
    bool trouble = false;
    const bool done = shop().act([&] {
        for (const QString& path : paths)
            take(path, source, said, trouble);
    });
    if (!done || said.isEmpty())
        return done;
    if (trouble)
        shop().tellTrouble(said.join(u'\n'));
    else
        shop().tell(said.join(u'\n'));
    return true;
}

void Arrivals::take(const QString& path, Source source, QStringList& said, bool& trouble)
{
    const auto refuse = [&](const std::vector<Error>& errors) {
        trouble = true;
        for (const Error& error : errors)
            said.append(model::said(error.sentence()));
    };
    const auto text = storage::readDocument(path.toStdString());
    if (!text.ok())
        return refuse(text.errors());
    if (source == Source::Folder && acts::isKnown(shop().database(), *text))
        return;
    const auto arrived =
        acts::receiveOrder(shop().database(), shop().catalogue(), *text, shop().stamp(), false);
    if (!arrived.ok())
        return refuse(arrived.errorsWithin(QFileInfo(path).fileName().toStdString()));
    const QString name = tr("%1, revision %2").arg(shown(arrived->job)).arg(arrived->revision);
    if (!arrived->arrival) {
        trouble = true;
        said.append(tr("%1 is not taken in, because its runs have findings that block:").arg(name));
        for (const rules::Finding& finding : arrived->findings)
            if (finding.weight == rules::Weight::Blocks)
                said.append(shown(acts::describe(finding, shop().style())));
        return;
    }
    said.append(tr("%1: %2").arg(name, model::said(acts::inWords(arrived->arrival->outcome))));
    if (source == Source::Person)
        current_ = arrived->arrival->outcome == storage::Arrival::Outcome::Waits ? rowOf(arrived->hash)
                                                                                 : exact(arrived->order);
}

void Arrivals::acceptCurrent()
{
    const storage::WaitingOrder* waits = currentWaiting();
    if (waits == nullptr || !shop().letsPlan())
        return;
    const storage::WaitingOrder order = *waits;
    shop().act([&] {
        const auto arrived =
            acts::receiveOrder(shop().database(), shop().catalogue(),
                               storage::waitingDocument(shop().database(), order.hash), shop().stamp(), true);
        if (!arrived.ok())
            return shop().tellTrouble(arrived.errors());
        if (arrived->arrival && arrived->arrival->outcome == storage::Arrival::Outcome::Taken) {
            current_ = exact(order.order);
            return shop().tell(
                tr("%1, revision %2: taken in").arg(shown(arrived->job)).arg(arrived->revision));
        }
        QStringList reasons = {tr("It still waits:")};
        if (arrived->arrival)
            for (const std::string& reason : arrived->arrival->reasons)
                reasons.append(said(reason));
        shop().tellTrouble(reasons.join(u'\n'));
    });
}

void Arrivals::dismissCurrent()
{
    const storage::WaitingOrder* waits = currentWaiting();
    if (waits == nullptr || !shop().letsPlan())
        return;
    const storage::WaitingOrder order = *waits;
    shop().act([&] {
        const QString name = tr("%1, revision %2").arg(preview_->title()).arg(order.revision);
        if (!storage::dismissWaiting(shop().database(), order.hash, shop().stamp()))
            return shop().tellTrouble(tr("%1 does not wait any more").arg(name));
        current_ = exact(order.order);
        shop().tell(
            tr("%1 is not taken. It is kept, and waits again if a person takes it in again").arg(name));
    });
}

void Arrivals::holdCurrent(bool held)
{
    if (!current_.isEmpty() && !currentWaits())
        shop().holdOrder(current_.toStdString(), preview_->title(), held);
}

QString Arrivals::question() const
{
    QStringList lines = {tr("%1 (%2)").arg(preview_->title(), preview_->subtitle()), QString()};
    for (const Row& row : preview_->findings()->rows())
        if (row.weight > 0)
            lines.append(row.detail.isEmpty() ? row.title : tr("%1: %2").arg(row.detail, row.title));
    return lines.join(u'\n');
}

void Arrivals::copy(const QString& text)
{
    QGuiApplication::clipboard()->setText(text);
    shop().tell(tr("Copied: paste it into a message to the installer"));
}

void Arrivals::watchFolder()
{
    if (folder_ == shop().preferences()->watchedFolder())
        return;
    folder_ = shop().preferences()->watchedFolder();
    drops_ = {};
    folderTrouble_.clear();
    if (!nudge_.directories().isEmpty())
        nudge_.removePaths(nudge_.directories());
    if (folder_.isEmpty())
        return look_.stop();
    if (QFileInfo(folder_).isDir())
        nudge_.addPath(folder_);
    look_.start();
}

void Arrivals::lookIntoFolder()
{
    if (!shop().mayPlan())
        return;
    const auto ready = drops_.look(folder_.toStdString());
    if (!ready.ok()) {
        const QString trouble = said(ready.errors().front().sentence());
        if (std::exchange(folderTrouble_, trouble) != trouble)
            shop().tellTrouble(trouble);
        return;
    }
    folderTrouble_.clear();
    QStringList paths;
    for (const std::string& path : *ready)
        paths.append(exact(path));
    // What the database would not take is given again: taking an order twice is harmless.
    if (!paths.isEmpty() && !takeAll(paths, Source::Folder))
        for (const std::string& path : *ready)
            drops_.giveAgain(path);
}

} // namespace lapwright::model
