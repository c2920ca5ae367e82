#include <QQmlEngine>
#include <QtQuickTest>

/// Runs every tst_*.qml of the folder it was built for; the modules are found beside the build.
class Setup : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine* engine) { engine->addImportPath(QStringLiteral("qrc:/qt/qml")); }
};

QUICK_TEST_MAIN_WITH_SETUP(lapwright, Setup)

#include "qml_harness.moc"
