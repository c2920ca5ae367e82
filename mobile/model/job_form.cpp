#include "model/job_form.h"

#include "model/colours.h"
#include "model/words.h"
#include "speech/spoken.h"

#include <QDate>

#include <algorithm>
#include <iterator>

namespace lapwright::field {

JobForm::JobForm(const Tablet& tablet, JobEditor& editor, const Settings& settings, QObject* parent)
    : QObject(parent), tablet_(tablet), editor_(editor), settings_(settings)
{
    connect(&editor, &JobEditor::jobChanged, this, &JobForm::refresh);
    refresh();
}

void JobForm::refresh()
{
    std::vector<Choice> sets;
    const std::vector<std::string>& held = editor_.job().ruleSets;
    for (const auto& [id, set] : tablet_.catalogue().ruleSets)
        sets.push_back({exact(id), named(set.name), shown(set.edition),
                        std::find(held.begin(), held.end(), id) != held.end()});
    ruleSets_.show(std::move(sets));
    emit changed();
}

void JobForm::setText(const char* kind, const QString& words, std::string site::Job::*field,
                      const QString& text)
{
    // What is shown may lack what shows nothing: left as it stands, it is left as it is.
    if (!editor_.isOpen() || text == shown(editor_.job().*field))
        return;
    const std::string given = kept(text, field == &site::Job::address ? longestAddress : longestName);
    editor_.act(kind, words, [&](site::Job& job) { job.*field = given; });
}

QString JobForm::name() const
{
    return shown(editor_.job().name);
}

void JobForm::setName(const QString& name)
{
    setText("head.name", tr("name of the job"), &site::Job::name, name);
}

QString JobForm::customer() const
{
    return shown(editor_.job().customer);
}

void JobForm::setCustomer(const QString& customer)
{
    setText("head.customer", tr("customer"), &site::Job::customer, customer);
}

QString JobForm::address() const
{
    return shown(editor_.job().address);
}

void JobForm::setAddress(const QString& address)
{
    setText("head.address", tr("place"), &site::Job::address, address);
}

QString JobForm::wantedBy() const
{
    return shown(editor_.job().wantedBy);
}

void JobForm::setWantedBy(const QString& date)
{
    const QString given = date.trimmed();
    if (!given.isEmpty() && !QDate::fromString(given, Qt::ISODate).isValid()) {
        emit failed(tr("“%1” is no date; write it as 2026-12-10.").arg(given));
        return;
    }
    setText("head.wanted-by", tr("date wanted"), &site::Job::wantedBy, given);
}

QString JobForm::measuredBy() const
{
    return shown(editor_.job().measuredBy);
}

void JobForm::setMeasuredBy(const QString& person)
{
    setText("head.measured-by", tr("who measured"), &site::Job::measuredBy, person);
}

QStringList JobForm::metals() const
{
    QStringList names;
    for (const auto& [id, metal] : tablet_.catalogue().metals)
        names << named(metal.name);
    return names;
}

int JobForm::metal() const
{
    const auto& metals = tablet_.catalogue().metals;
    const auto found = metals.find(editor_.job().material.metal);
    return found == metals.end() ? -1 : static_cast<int>(std::distance(metals.begin(), found));
}

void JobForm::setMetal(int metal)
{
    const auto& metals = tablet_.catalogue().metals;
    if (metal < 0 || metal >= static_cast<int>(metals.size()) || metal == this->metal())
        return;
    const metal::Metal& chosen = std::next(metals.begin(), metal)->second;
    editor_.act("head.metal", tr("metal"), [&](site::Job& job) {
        job.material.metal = chosen.id;
        // A gauge number means another thickness in another metal: keep it only where it is sold.
        if (metal::findSheet(chosen, job.material.gauge) == nullptr && !chosen.sheets.empty())
            job.material.gauge = chosen.sheets[chosen.sheets.size() / 2].gauge;
    });
}

QStringList JobForm::gauges() const
{
    QStringList gauges;
    const auto metal = tablet_.catalogue().metals.find(editor_.job().material.metal);
    if (metal != tablet_.catalogue().metals.end())
        for (const metal::Sheet& sheet : metal->second.sheets)
            gauges << tr("%1, %2").arg(shown(spokenWhole(sheet.gauge)),
                                       shown(writeThickness(sheet.thickness, settings_.style())));
    return gauges;
}

int JobForm::gauge() const
{
    const auto metal = tablet_.catalogue().metals.find(editor_.job().material.metal);
    if (metal == tablet_.catalogue().metals.end())
        return -1;
    const auto& sheets = metal->second.sheets;
    const auto found = std::find_if(sheets.begin(), sheets.end(), [this](const metal::Sheet& sheet) {
        return sheet.gauge == editor_.job().material.gauge;
    });
    return found == sheets.end() ? -1 : static_cast<int>(found - sheets.begin());
}

void JobForm::setGauge(int gauge)
{
    const auto metal = tablet_.catalogue().metals.find(editor_.job().material.metal);
    if (metal == tablet_.catalogue().metals.end() || gauge < 0 ||
        gauge >= static_cast<int>(metal->second.sheets.size()) || gauge == this->gauge())
        return;
    editor_.act("head.gauge", tr("gauge"), [&](site::Job& job) {
        job.material.gauge = metal->second.sheets[static_cast<std::size_t>(gauge)].gauge;
    });
}

QStringList JobForm::colours() const
{
    QStringList names;
    for (const NamedColour& offered : offeredColours())
        names << QString::fromUtf8(offered.name.data(), static_cast<qsizetype>(offered.name.size()));
    return names;
}

QString JobForm::colour() const
{
    return shown(editor_.job().material.colour);
}

void JobForm::setColour(const QString& colour)
{
    if (colour != this->colour())
        editor_.act("head.colour", tr("colour"),
                    [&](site::Job& job) { job.material.colour = kept(colour, longestColour); });
}

bool JobForm::toggleRuleSet(const QString& id)
{
    return editor_.act("head.rules", tr("rules to hold to"), [&](site::Job& job) {
        const auto held = std::find(job.ruleSets.begin(), job.ruleSets.end(), kept(id));
        if (held == job.ruleSets.end())
            job.ruleSets.push_back(kept(id));
        else
            job.ruleSets.erase(held);
    });
}

QString JobForm::shownLength(const std::optional<Length>& length) const
{
    return length ? shown(write(*length, settings_.style())) : QString();
}

void JobForm::setLimit(const QString& words, const QString& text, const std::optional<Length>& now,
                       const std::function<void(site::PieceLimits&, std::optional<Length>)>& set,
                       bool mayBeEmpty)
{
    // What is shown may be rounded: left as it stands, it is left as it is.
    if (text == shownLength(now))
        return;
    std::optional<Length> length;
    if (const bool empty = text.trimmed().isEmpty(); !empty || !mayBeEmpty) {
        const MeasureRead read = readMeasured(text, settings_.style());
        if (!read.measured) {
            emit failed(empty ? tr("There must be a length here.") : read.problem);
            return;
        }
        length = read.measured->value;
    }
    editor_.act("head.limit", words, [&](site::Job& job) { set(job.limits, length); });
    emit changed();
}

QString JobForm::foldingLength() const
{
    return shownLength(editor_.job().limits.foldingLength);
}

void JobForm::setFoldingLength(const QString& length)
{
    setLimit(
        tr("folding length"), length, editor_.job().limits.foldingLength,
        [](site::PieceLimits& limits, std::optional<Length> given) { limits.foldingLength = *given; }, false);
}

QString JobForm::stockLength() const
{
    return shownLength(editor_.job().limits.stockLength);
}

void JobForm::setStockLength(const QString& length)
{
    setLimit(
        tr("stock length"), length, editor_.job().limits.stockLength,
        [](site::PieceLimits& limits, std::optional<Length> given) { limits.stockLength = given; }, true);
}

QString JobForm::transportLength() const
{
    return shownLength(editor_.job().limits.transportLength);
}

void JobForm::setTransportLength(const QString& length)
{
    setLimit(
        tr("transport length"), length, editor_.job().limits.transportLength,
        [](site::PieceLimits& limits, std::optional<Length> given) { limits.transportLength = given; }, true);
}

QString JobForm::shortestPiece() const
{
    return shownLength(editor_.job().limits.shortestPiece);
}

void JobForm::setShortestPiece(const QString& length)
{
    setLimit(
        tr("shortest piece"), length, editor_.job().limits.shortestPiece,
        [](site::PieceLimits& limits, std::optional<Length> given) { limits.shortestPiece = *given; }, false);
}

QString JobForm::windPressure() const
{
    const auto psf = editor_.job().velocityPressurePsf;
    return psf ? QString::number(*psf) : QString();
}

void JobForm::setWindPressure(const QString& psf)
{
    constexpr int most = 1000; // job.schema.json
    if (psf.trimmed() == windPressure())
        return;
    bool isNumber = false;
    const int given = psf.trimmed().toInt(&isNumber);
    if (!psf.trimmed().isEmpty() && (!isNumber || given < 1 || given > most)) {
        emit failed(tr("“%1” is no wind pressure; write whole pounds per square foot, 1 to %2.")
                        .arg(psf.trimmed())
                        .arg(most));
        return;
    }
    editor_.act("head.wind", tr("wind pressure"), [&](site::Job& job) {
        job.velocityPressurePsf = isNumber ? std::optional<std::int64_t>(given) : std::nullopt;
    });
}

} // namespace lapwright::field
