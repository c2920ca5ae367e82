#include "paint/face.h"

#include <QFile>
#include <QFontDatabase>
#include <QStringList>

namespace lapwright::paint {

QFont pictureFace(bool bold)
{
    static const bool registered = [] {
        for (const char* file :
             {":/lapwright/faces/DejaVuSans.ttf", ":/lapwright/faces/DejaVuSans-Bold.ttf"}) {
            if (QFile::exists(file))
                QFontDatabase::addApplicationFont(file);
        }
        return true;
    }();
    Q_UNUSED(registered)
    QFont face;
    face.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("sans-serif")});
    face.setBold(bold);
    face.setKerning(false);
    // No ligatures: they are narrower than their letters, and "fi" is not found in a PDF that has one for it.
    face.setStyleStrategy(QFont::PreferNoShaping);
    face.setHintingPreference(QFont::PreferNoHinting);
    return face;
}

} // namespace lapwright::paint
