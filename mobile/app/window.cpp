#include "app/window.h"

#include "speech/language.h"

namespace lapwright::field {

QQuickWindow* openWindow(QQmlApplicationEngine& engine, FieldApp& app)
{
    speak(app.settings()->language());
    app.sayAnew();
    QObject::connect(app.settings(), &Settings::languageChanged, &engine, [&engine, &app] {
        speak(app.settings()->language());
        engine.retranslate();
        app.sayAnew();
    });
    engine.addImportPath("qrc:/qt/qml");
    engine.setInitialProperties({{"app", QVariant::fromValue(&app)}});
    engine.load(QUrl("qrc:/qt/qml/Lapwright/Field/Main.qml"));
    return engine.rootObjects().isEmpty() ? nullptr
                                          : qobject_cast<QQuickWindow*>(engine.rootObjects().front());
}

} // namespace lapwright::field
