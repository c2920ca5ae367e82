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
    face.setHintingPreference(QFont::PreferNoHinting);
    return face;
}

} // namespace lapwright::paint
