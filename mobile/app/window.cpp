#include "app/window.h"

namespace lapwright::field {

QQuickWindow* openWindow(QQmlApplicationEngine& engine, FieldApp& app)
{
    engine.addImportPath("qrc:/qt/qml");
    engine.setInitialProperties({{"app", QVariant::fromValue(&app)}});
    engine.load(QUrl("qrc:/qt/qml/Lapwright/Field/Main.qml"));
    return engine.rootObjects().isEmpty() ? nullptr
                                          : qobject_cast<QQuickWindow*>(engine.rootObjects().front());
}

} // namespace lapwright::field
