#pragma once

#include "mobile/invented_house.h"
#include "mobile/tablet_at.h"
#include "model/field_app.h"
#include "schedule/load.h"

#include <QAbstractItemModelTester>
#include <QTemporaryDir>
#include <QtTest>

#include <memory>
#include <vector>

namespace lapwright::field {

/// The field app without a window, in a folder of its own, and every list in it watched.
struct FieldBench {
    QTemporaryDir folder;
    QString path = folder.filePath("tablet.db");
    std::unique_ptr<Tablet> tablet = std::make_unique<Tablet>(tabletAt(path));
    std::unique_ptr<FieldApp> app = std::make_unique<FieldApp>(*tablet);
    std::vector<std::unique_ptr<QAbstractItemModelTester>> testers;

    FieldBench() { watch(); }
    void watch()
    {
        const std::vector<QAbstractItemModel*> lists = {app->jobs(),
                                                        app->editor()->chains(),
                                                        app->editor()->runs(),
                                                        app->editor()->suspects(),
                                                        app->trim()->kinds(),
                                                        app->trim()->trims(),
                                                        app->trim()->sizes(),
                                                        app->trim()->runs(),
                                                        app->check(),
                                                        app->photos(),
                                                        app->order()->pieces(),
                                                        app->order()->profiles(),
                                                        app->order()->changes(),
                                                        app->delivery()};
        for (QAbstractItemModel* list : lists)
            testers.push_back(std::make_unique<QAbstractItemModelTester>(
                list, QAbstractItemModelTester::FailureReportingMode::QtTest));
    }
    void restart()
    {
        testers.clear();
        app.reset();
        tablet.reset();
        tablet = std::make_unique<Tablet>(tabletAt(path));
        app = std::make_unique<FieldApp>(*tablet);
        watch();
    }
    JobEditor& editor() { return *app->editor(); }
    bool add(const QString& length)
    {
        editor().entry()->length()->setText(length);
        return editor().keepRun();
    }
    void house() { QVERIFY(measureHouse(*app)); }
};

/// Two bundles for one invented house.
inline schedule::Load inventedLoad()
{
    schedule::Load load;
    load.id = "00000000-0000-4000-8000-00000000aaaa";
    load.truck = "White truck";
    load.madeAt = "2026-11-25T08:00:00Z";
    const auto piece = [](const char* mark, std::int64_t count) {
        return schedule::LoadedPiece{mark, count, "E1", "P1", Length::feet(10)};
    };
    load.bundles = {{"B1",
                     "00000000-0000-4000-8000-00000000bbbb",
                     "Alder",
                     {"galvanised-steel", "24 ga", "Slate"},
                     {piece("E1.1", 4), piece("E1.2", 1)},
                     20.0,
                     false},
                    {"B2",
                     "00000000-0000-4000-8000-00000000bbbb",
                     "Alder",
                     {"galvanised-steel", "24 ga", "Slate"},
                     {piece("E2.1", 2)},
                     9.0,
                     true}};
    return load;
}

} // namespace lapwright::field
