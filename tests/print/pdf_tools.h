#pragma once

// A PDF seen by the tools of Poppler, apart from what wrote it.
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <string>

namespace lapwright::print {

class PdfFile {
public:
    explicit PdfFile(const std::string& bytes)
    {
        QFile file(path());
        if (file.open(QIODevice::WriteOnly))
            file.write(QByteArray::fromStdString(bytes));
        file.close();
        info_ = run("pdfinfo", {path()});
        text_ = run("pdftotext", {"-layout", path(), "-"});
        fonts_ = run("pdffonts", {path()});
    }

    /// What Poppler complains of, and fonts that are not inside.
    [[nodiscard]] QString problems() const
    {
        QString all = problems_;
        const QStringList lines = fonts_.split('\n', Qt::SkipEmptyParts);
        if (lines.size() < 3)
            all += "no font; ";
        for (qsizetype line = 2; line < lines.size(); ++line) {
            // name, type, encoding, emb, sub, uni, object ID: "… CID TrueType  Identity-H  yes yes yes  7 0"
            static const QRegularExpression embedded("\\s+yes\\s+\\w+\\s+\\w+\\s+\\d+\\s+\\d+\\s*$");
            if (!embedded.match(lines[line]).hasMatch())
                all += "font not embedded: " + lines[line] + "; ";
        }
        return all;
    }

    [[nodiscard]] QString title() const { return value("Title"); }
    [[nodiscard]] int pageCount() const { return value("Pages").toInt(); }
    [[nodiscard]] double widthInPoints() const { return value("Page size").section(' ', 0, 0).toDouble(); }
    [[nodiscard]] double heightInPoints() const { return value("Page size").section(' ', 2, 2).toDouble(); }
    /// Page by page.
    [[nodiscard]] QStringList texts() const { return text_.split('\f'); }
    [[nodiscard]] int wordCount(const QString& word) const
    {
        return static_cast<int>(text_.split(QRegularExpression("[\\s,\\x{a0}]+")).count(word));
    }
    /// One page as a printer of so many dots to the inch has it; `ink` is "-gray", "-mono" or empty.
    [[nodiscard]] QImage image(int page, int dotsPerInch, const QString& ink) const
    {
        const QString number = QString::number(page), root = folder_.filePath("image");
        QStringList arguments = {"-r",         QString::number(dotsPerInch), "-f", number, "-l", number,
                                 "-singlefile"};
        if (!ink.isEmpty())
            arguments << ink;
        run("pdftoppm", arguments << path() << root);
        for (const char* ending : {".ppm", ".pgm", ".pbm"}) {
            const QString name = root + ending;
            if (QFile::exists(name)) {
                QImage image(name);
                QFile::remove(name);
                return image;
            }
        }
        return {};
    }

private:
    [[nodiscard]] QString path() const { return folder_.filePath("paper.pdf"); }
    [[nodiscard]] QString value(const QString& name) const
    {
        const QRegularExpression line("^" + name + ":\\s*(.*)$", QRegularExpression::MultilineOption);
        return line.match(info_).captured(1).trimmed();
    }
    QString run(const QString& program, const QStringList& arguments) const
    {
        QProcess process;
        process.start(program, arguments);
        if (!process.waitForFinished(120'000) || process.exitCode() != 0)
            problems_ += program + " failed; ";
        problems_ += QString::fromUtf8(process.readAllStandardError());
        return QString::fromUtf8(process.readAllStandardOutput());
    }

    QTemporaryDir folder_;
    QString info_;
    QString text_;
    QString fonts_;
    mutable QString problems_;
};

} // namespace lapwright::print
