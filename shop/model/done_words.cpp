#include "done_words.h"

#include "text.h"

#include <QCoreApplication>

namespace lapwright::model {

QString inWords(const acts::Done& done)
{
    QString words = said(done.work) + u' ' + shown(done.at);
    if (!done.person.empty())
        words = QCoreApplication::translate("Done", "%1 by %2").arg(words, shown(done.person));
    if (!done.station.empty())
        words += QStringLiteral(", ") + shown(done.station);
    return words;
}

QString behind(const acts::Done& done)
{
    return QStringLiteral(" · ") + inWords(done);
}

} // namespace lapwright::model
