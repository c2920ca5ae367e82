#pragma once

#include "arrivals.h"
#include "batches.h"
#include "cutting_desk.h"
#include "database_watch.h"
#include "drawing/display_list.h"
#include "folding_desk.h"
#include "loads.h"
#include "measure/result.h"
#include "papers.h"
#include "pieces/takeoff.h"
#include "plan_worker.h"
#include "preferences.h"
#include "reference_shelf.h"
#include "rules/finding.h"
#include "schedule/civil.h"
#include "schedule_desk.h"
#include "shop_code.h"
#include "stock_desk.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <QColor>
#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <future>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::model {

/// The shop as the screens see it: its database, who is at this station, and a desk for each screen.
class Shop : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made in main()")
    Q_PROPERTY(QString name READ name NOTIFY dataChanged FINAL)
    Q_PROPERTY(QString databasePath READ databasePath CONSTANT FINAL)
    /// The last thing that was done or went wrong; empty: nothing to say.
    Q_PROPERTY(QString message READ message NOTIFY messageChanged FINAL)
    Q_PROPERTY(bool trouble READ trouble NOTIFY messageChanged FINAL)
    /// The database does not answer: why, and what happens; empty: it does.
    Q_PROPERTY(QString lost READ lost NOTIFY lostChanged FINAL)
    /// This person may take orders in, plan, load and keep the stock.
    Q_PROPERTY(bool mayPlan READ mayPlan NOTIFY dutyChanged FINAL)
    /// Why this person may not; empty: may.
    Q_PROPERTY(QString whyNotPlan READ whyNotPlan NOTIFY dutyChanged FINAL)
    Q_PROPERTY(QString whyNotMake READ whyNotMake NOTIFY dutyChanged FINAL)
    /// Orders that wait for a person, and marks that wait to be ordered again, whatever screen is in sight.
    Q_PROPERTY(int waiting READ waiting NOTIFY queuesChanged FINAL)
    Q_PROPERTY(int remakes READ remakes NOTIFY queuesChanged FINAL)
    Q_PROPERTY(lapwright::model::Preferences* preferences READ preferences CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::PlanWorker* planner READ planner CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::Papers* papers READ papers CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::Arrivals* arrivals READ arrivals CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::Batches* batches READ batches CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::CuttingDesk* cutting READ cutting CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::FoldingDesk* folding READ folding CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::ScheduleDesk* schedule READ schedule CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::Loads* loads READ loads CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::StockDesk* stock READ stock CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::ReferenceShelf* reference READ reference CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::ShopCode* code READ code CONSTANT FINAL)

public:
    /// What is read of `libraryFolders` may be on its way already. Errors: a database that cannot be opened,
    /// a library file that does not hold.
    [[nodiscard]] static Result<std::unique_ptr<Shop>> open(const QString& databasePath,
                                                            const QString& preferencesPath,
                                                            const std::vector<std::string>& libraryFolders,
                                                            std::future<Result<pieces::Catalogue>> catalogue);
    [[nodiscard]] static Result<std::unique_ptr<Shop>> open(const QString& databasePath,
                                                            const QString& preferencesPath,
                                                            const std::vector<std::string>& libraryFolders);
    ~Shop() override;
    Q_DISABLE_COPY_MOVE(Shop)

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString databasePath() const { return databasePath_; }
    [[nodiscard]] QString message() const { return message_; }
    [[nodiscard]] bool trouble() const { return trouble_; }
    [[nodiscard]] bool mayPlan() const { return preferences_->duty() == Preferences::Duty::Planner; }
    [[nodiscard]] bool mayMake() const { return preferences_->duty() != Preferences::Duty::Viewer; }
    [[nodiscard]] QString whyNotPlan() const;
    [[nodiscard]] QString whyNotMake() const;
    [[nodiscard]] QString lost() const;
    [[nodiscard]] int waiting() const { return waiting_; }
    [[nodiscard]] int remakes() const { return remakes_; }
    [[nodiscard]] Preferences* preferences() const { return preferences_; }
    [[nodiscard]] PlanWorker* planner() const { return planner_; }
    [[nodiscard]] Papers* papers() const { return papers_; }
    [[nodiscard]] Arrivals* arrivals() const { return arrivals_; }
    [[nodiscard]] Batches* batches() const { return batches_; }
    [[nodiscard]] CuttingDesk* cutting() const { return cutting_; }
    [[nodiscard]] FoldingDesk* folding() const { return folding_; }
    [[nodiscard]] ScheduleDesk* schedule() const { return schedule_; }
    [[nodiscard]] Loads* loads() const { return loads_; }
    [[nodiscard]] StockDesk* stock() const { return stock_; }
    [[nodiscard]] ReferenceShelf* reference() const { return reference_; }
    [[nodiscard]] ShopCode* code() const { return code_; }

    Q_INVOKABLE void closeMessage();
    /// Writes a copy of everything the database keeps.
    Q_INVOKABLE void backUp(const QUrl& file);
    /// Puts a copy in place of everything the database keeps, for every station; what stood there before is
    /// kept beside the copy.
    Q_INVOKABLE void restore(const QUrl& file);
    /// "1 piece", "3 pieces".
    Q_INVOKABLE [[nodiscard]] QString counted(qint64 count, const QString& what) const;

    [[nodiscard]] const storage::Database& database() const { return database_; }
    [[nodiscard]] const pieces::Catalogue& catalogue() const { return catalogue_; }
    [[nodiscard]] const std::vector<std::string>& libraryFolders() const { return libraryFolders_; }
    /// Ids of the folding machines that stand in the shop; none: nobody said which.
    [[nodiscard]] const std::vector<std::string>& machines() const { return machines_; }
    [[nodiscard]] storage::Stamp stamp() const;
    /// What the clock on the shop's wall says.
    [[nodiscard]] static schedule::Moment wallClock();
    [[nodiscard]] Style style() const { return preferences_->style(); }
    /// "24 ga Galvanised steel, Slate".
    [[nodiscard]] QString describe(const site::Material& material) const;
    /// What a colour of the shop looks like; a plain grey where nobody said.
    [[nodiscard]] drawing::Colour colourOf(const std::string& name) const;
    [[nodiscard]] QColor swatchOf(const std::string& name) const;

    /// Whether this person may; why not is told.
    [[nodiscard]] bool letsPlan();
    [[nodiscard]] bool letsMake();

    void tell(const QString& message);
    void tellTrouble(const QString& message);
    void tellTrouble(const std::vector<Error>& errors);
    /// Does it; what the database throws is told and false returned. After it all desks look again.
    bool act(const std::function<void()>& work);
    /// The same for reading: nobody has to look again.
    bool attempt(const std::function<void()>& work);
    /// Plans beside the work of this thread, then calls `done` unless it failed, which is told. Nothing where
    /// a plan is being made already.
    void plan(PlanWork work, const std::function<void(const PlanDone&)>& done);
    /// The same for cuts and schedule, as Settings say how long to look.
    void planCuts(const std::function<void(const PlanDone&)>& done);
    /// Keeps an order out of the plans, or lets it in; who may not is told. `name` is what people call it.
    void holdOrder(const std::string& order, const QString& name, bool held);
    /// The library files are others now.
    void rereadLibrary();
    /// Grows with every rereadLibrary().
    [[nodiscard]] int libraryVersion() const { return libraryVersion_; }
    /// Every desk looks again.
    void noteChange();

signals:
    void messageChanged();
    void dutyChanged();
    void lostChanged();
    void queuesChanged();
    void dataChanged();

private:
    Shop(storage::Database database, pieces::Catalogue catalogue, QString databasePath,
         const QString& preferencesPath, std::vector<std::string> libraryFolders);
    /// What the stock document says of the shop itself.
    void readShop();
    void countQueues();

    storage::Database database_;
    pieces::Catalogue catalogue_;
    QString databasePath_;
    std::vector<std::string> libraryFolders_;
    int libraryVersion_ = 0;
    std::map<std::string, std::string> colours_;
    std::vector<std::string> machines_;
    QString name_;
    std::optional<std::string> stockDocument_; ///< that colours, machines and name were read from
    int waiting_ = 0;
    int remakes_ = 0;
    QString message_;
    bool trouble_ = false;
    DatabaseWatch* watch_;
    Preferences* preferences_;
    PlanWorker* planner_;
    Papers* papers_;
    Arrivals* arrivals_;
    Batches* batches_;
    CuttingDesk* cutting_;
    FoldingDesk* folding_;
    ScheduleDesk* schedule_;
    Loads* loads_;
    StockDesk* stock_;
    ReferenceShelf* reference_;
    ShopCode* code_;
};

} // namespace lapwright::model
