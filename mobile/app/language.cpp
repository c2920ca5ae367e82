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
    const QLocale locale = language.isEmpty() ? QLocale::system() : QLocale(language);
    const bool spoken = translator.load(locale, "lapwright", "_", languageFolder) ||
                        translator.load(QString(languageFolder) + "/lapwright_en.qm");
    if (spoken)
        QCoreApplication::installTranslator(&translator);
}

} // namespace lapwright::field
