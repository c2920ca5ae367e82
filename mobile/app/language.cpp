#include "app/language.h"

#include "model/settings.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

namespace lapwright::field {

void speak(const QString& language)
{
    static QTranslator translator;
    QCoreApplication::removeTranslator(&translator);
    const QLocale system = QLocale::system();
    // Spanish on a tablet of the United States counts as people do there: 1,234.5 and not 1.234,5.
    const bool isFile = language.endsWith(".qm") && translator.load(language);
    const QString code = isFile ? translator.language() : language;
    const QLocale wanted = code.isEmpty() ? system : QLocale(QLocale(code).language(), system.territory());
    const bool translated = isFile || translator.load(wanted, "lapwright", "_", languageFolder);
    if (translated || translator.load(QString(languageFolder) + "/lapwright_en.qm"))
        QCoreApplication::installTranslator(&translator);
    QLocale::setDefault(translated ? wanted : QLocale(QLocale::English, system.territory()));
}

} // namespace lapwright::field
