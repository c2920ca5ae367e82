#include "speech/language.h"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>
#include <QTranslator>

#include <array>

namespace lapwright {

namespace {

/// The files that together are one language, what is common to all first.
constexpr std::array catalogues = {"lapwright", "shop"};

bool load(QTranslator& translator, const QLocale& wanted, const char* catalogue)
{
    return translator.load(wanted, catalogue, "_", languageFolder);
}

} // namespace

void speak(const QString& language)
{
    static std::array<QTranslator, catalogues.size()> translators;
    for (QTranslator& translator : translators)
        QCoreApplication::removeTranslator(&translator);
    const QLocale system = QLocale::system();
    const bool isFile = language.endsWith(".qm") && translators[0].load(language);
    const QString code = isFile ? translators[0].language() : language;
    // Spanish on a machine of the United States counts as people do there: 1,234.5 and not 1.234,5.
    const QLocale wanted = code.isEmpty() ? system : QLocale(QLocale(code).language(), system.territory());
    const bool translated = isFile || load(translators[0], wanted, catalogues[0]);
    if (translated || translators[0].load(QString(languageFolder) + "/lapwright_en.qm"))
        QCoreApplication::installTranslator(&translators[0]);
    if (translated && !isFile && load(translators[1], wanted, catalogues[1]))
        QCoreApplication::installTranslator(&translators[1]);
    QLocale::setDefault(translated ? wanted : QLocale(QLocale::English, system.territory()));
}

std::optional<Error> whyNotSpoken(const QString& language)
{
    QTranslator file;
    const QStringList known = languages();
    if (language.isEmpty() || known.contains(language) || (language.endsWith(".qm") && file.load(language)))
        return std::nullopt;
    return Error{"--language", language.toStdString(),
                 "one of " + known.join(", ").toStdString() + ", or a .qm file"};
}

QStringList languages()
{
    QStringList codes;
    for (const QString& name : QDir(languageFolder).entryList({"lapwright_*.qm"}, QDir::Files, QDir::Name))
        codes << name.section('_', 1).chopped(3);
    return codes;
}

QString ownNameOf(const QString& code)
{
    QTranslator language;
    if (!language.load(QString(languageFolder) + "/lapwright_" + code + ".qm"))
        return code;
    const QString name = language.translate("Language", "English");
    return name.isEmpty() ? QLocale(code).nativeLanguageName() : name;
}

} // namespace lapwright
