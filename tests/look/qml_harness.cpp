#include <QKeyEvent>
#include <QQmlContext>
#include <QQmlEngine>
#include <QtQuickTest>

/// A finger that stays on a key, which a TestCase has not.
class Finger : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// As a system tells it: pressed again and again, and let go in the end.
    Q_INVOKABLE void hold(QObject* window, int key) const
    {
        const auto tell = [&](QEvent::Type type, bool again) {
            QKeyEvent event(type, key, Qt::NoModifier, {}, again);
            QCoreApplication::sendEvent(window, &event);
        };
        tell(QEvent::KeyPress, false);
        for (int repeat = 0; repeat < 4; ++repeat) {
            tell(QEvent::KeyRelease, true);
            tell(QEvent::KeyPress, true);
        }
        tell(QEvent::KeyRelease, false);
    }
};

/// Runs every tst_*.qml of the folder it was built for; the modules are found beside the build.
class Setup : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine* engine)
    {
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine->rootContext()->setContextProperty(QStringLiteral("finger"), new Finger(engine));
    }
};

QUICK_TEST_MAIN_WITH_SETUP(lapwright, Setup)

#include "qml_harness.moc"
