#include "paperwork.h"

#include "documents/rates.h"
#include "input.h"
#include "print/pdf.h"
#include "speech/language.h"
#include "speech/spoken.h"

#include <QDateTime>

namespace lapwright::command {

namespace {

Result<print::Paper> paperOf(const QCommandLineParser& options)
{
    const std::string name = text(options, "paper");
    if (name == "letter")
        return print::letterPaper;
    if (name == "a4")
        return print::a4Paper;
    if (!name.empty())
        return Error{"--paper", name, "letter or a4"};
    return styleOf(options).unit == LengthUnit::Millimetres ? print::a4Paper : print::letterPaper;
}

Result<const print::LabelStock*> labelsOf(const QCommandLineParser& options, const print::Paper& paper)
{
    const std::string name = text(options, "labels");
    if (name == "100x50")
        return &print::roll100By50();
    if (name == "4x2")
        return &print::roll4By2();
    if (name == "sheet")
        return paper == print::a4Paper ? &print::a4SheetOf14() : &print::letterSheetOf10();
    return Error{"--labels", name, "100x50, 4x2 or sheet"};
}

} // namespace

QList<QCommandLineOption> paperOptions()
{
    return {{"paper", "Print on letter or a4; letter for feet and inches, a4 for millimetres, unless told.",
             "PAPER"},
            {"labels", "Label stock: 100x50 (mm) or 4x2 (in) for a roll, sheet for sheets of labels.",
             "STOCK", "sheet"},
            {"language", "Language of the PDF papers and drawings, en or es; the same as text stays English.",
             "LANGUAGE", "en"},
            {"rates", "The shop's rates (lapwright/rates): puts the cost on each order's confirmation.",
             "RATES"}};
}

Result<Paperwork> paperworkOf(const QCommandLineParser& options, const schedule::ShopStock& stock)
{
    const auto paper = paperOf(options);
    if (!paper.ok())
        return paper.errors();
    const auto labels = labelsOf(options, *paper);
    if (!labels.ok())
        return labels.errors();
    const QString language = options.value("language");
    if (!languages().contains(language))
        return Error{"--language", language.toStdString(), "one of " + languages().join(", ").toStdString()};
    speak(language);
    const QDateTime now = QDateTime::currentDateTime();
    Paperwork work;
    work.printing = {stock.shop, now.toString("yyyy-MM-dd HH:mm").toStdString(), *paper};
    work.madeAt = now.toUTC().toString(Qt::ISODate).toStdString();
    work.labels = *labels;
    work.style = styleOf(options);
    work.style.translation = spoken;
    if (options.isSet("rates")) {
        auto rates = readFrom(text(options, "rates"), documents::readRates);
        if (!rates.ok())
            return rates.errors();
        work.rates = std::move(rates->value);
    }
    return work;
}

void writePdf(TicketFolder& folder, const Paperwork& work, const std::string& kind, int number,
              const std::string& title, const std::vector<print::Page>& pages)
{
    if (!pages.empty())
        folder.write(kind, number, "pdf", print::pdfOf(pages, {title, work.madeAt}));
}

void writePdf(TicketFolder& folder, const Paperwork& work, const std::string& kind, int number,
              const print::Sheet& sheet)
{
    writePdf(folder, work, kind, number, sheet.title + (sheet.subject.empty() ? "" : ", " + sheet.subject),
             print::layOut(sheet, work.printing.paper));
}

} // namespace lapwright::command
