#include "shop_app.h"

#include <QGuiApplication>

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("lapwright-shop"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Lapwright"));
    QGuiApplication::setDesktopFileName(QStringLiteral("lapwright-shop"));
    return lapwright::shop_app::run(application);
}
