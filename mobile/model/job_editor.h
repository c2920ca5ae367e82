#pragma once

#include "documents/job.h"
#include "model/choice_list.h"
#include "model/plan_model.h"
#include "model/run_entry.h"
#include "model/run_list.h"
#include "model/settings.h"
#include "model/tablet.h"
#include "site/closure.h"
#include "store/jobs.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <memory>
#include <optional>

namespace lapwright::field {

/// The job in hand. Every act is on the disk before this object shows it; all can be undone, over restarts.
class JobEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool open READ isOpen NOTIFY jobChanged FINAL)
    Q_PROPERTY(QString jobId READ jobId NOTIFY jobChanged FINAL)
    Q_PROPERTY(QString name READ name NOTIFY jobChanged FINAL)
    Q_PROPERTY(QString undoWords READ undoWords NOTIFY jobChanged FINAL)
    Q_PROPERTY(QString redoWords READ redoWords NOTIFY jobChanged FINAL)
    Q_PROPERTY(lapwright::field::ChoiceList* chains READ chains CONSTANT FINAL)
    Q_PROPERTY(int chain READ chain WRITE setChain NOTIFY jobChanged FINAL)
    /// What a chain can be begun as; keys are kinds of run.
    Q_PROPERTY(lapwright::field::ChoiceList* chainKinds READ chainKinds CONSTANT FINAL)
    /// Id of the run in hand; empty for a new one.
    Q_PROPERTY(QString runId READ runId NOTIFY runChanged FINAL)
    /// The same, to find the run by.
    Q_PROPERTY(QString runKey READ runKey NOTIFY runChanged FINAL)
    /// The id that a new run would have.
    Q_PROPERTY(QString newRunId READ newRunId NOTIFY runChanged FINAL)
    Q_PROPERTY(QString chainName READ chainName NOTIFY jobChanged FINAL)
    Q_PROPERTY(bool obstacle READ hasObstacle NOTIFY jobChanged FINAL)
    Q_PROPERTY(QString obstacleWidth READ obstacleWidth NOTIFY jobChanged FINAL)
    Q_PROPERTY(bool cricket READ hasCricket NOTIFY jobChanged FINAL)
    Q_PROPERTY(bool closed READ isClosed NOTIFY jobChanged FINAL)
    Q_PROPERTY(bool canClose READ canClose NOTIFY jobChanged FINAL)
    Q_PROPERTY(lapwright::field::RunList* runs READ runs CONSTANT FINAL)
    /// The run in hand, -1 for a new one.
    Q_PROPERTY(int run READ run WRITE setRun NOTIFY runChanged FINAL)
    Q_PROPERTY(lapwright::field::RunEntry* entry READ entry CONSTANT FINAL)
    /// Every measure of the run in hand; the chosen one counts.
    Q_PROPERTY(lapwright::field::ChoiceList* measures READ measures CONSTANT FINAL)
    /// Place of the measure that counts among them; -1 for none.
    Q_PROPERTY(int counting READ counting NOTIFY runChanged FINAL)
    Q_PROPERTY(QString spread READ spread NOTIFY runChanged FINAL)
    /// How many photos there are of the run in hand.
    Q_PROPERTY(int photos READ photos NOTIFY runChanged FINAL)
    Q_PROPERTY(lapwright::field::PlanModel* plan READ plan CONSTANT FINAL)
    Q_PROPERTY(Closure closure READ closure NOTIFY jobChanged FINAL)
    Q_PROPERTY(QString closureWords READ closureWords NOTIFY jobChanged FINAL)
    /// What would explain that the chain does not close, best first; keys are run numbers.
    Q_PROPERTY(lapwright::field::ChoiceList* suspects READ suspects CONSTANT FINAL)

public:
    enum class Closure { Open, Closes, Off, Unknown };
    Q_ENUM(Closure)

    JobEditor(const Tablet& tablet, const Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] bool isOpen() const { return !job().id.empty(); }
    [[nodiscard]] QString jobId() const;
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString undoWords() const;
    [[nodiscard]] QString redoWords() const;
    [[nodiscard]] ChoiceList* chains() { return &chains_; }
    [[nodiscard]] int chain() const { return chain_; }
    void setChain(int chain);
    [[nodiscard]] ChoiceList* chainKinds() { return &chainKinds_; }
    [[nodiscard]] QString runId() const;
    [[nodiscard]] QString runKey() const;
    [[nodiscard]] QString newRunId() const;
    [[nodiscard]] QString chainName() const;
    [[nodiscard]] bool hasObstacle() const;
    [[nodiscard]] QString obstacleWidth() const;
    [[nodiscard]] bool hasCricket() const;
    [[nodiscard]] bool isClosed() const;
    [[nodiscard]] bool canClose() const;
    [[nodiscard]] RunList* runs() { return &runs_; }
    [[nodiscard]] int run() const { return run_; }
    void setRun(int run);
    [[nodiscard]] RunEntry* entry() { return &entry_; }
    [[nodiscard]] ChoiceList* measures() { return &measures_; }
    [[nodiscard]] int counting() const;
    [[nodiscard]] QString spread() const;
    [[nodiscard]] int photos() const;
    [[nodiscard]] PlanModel* plan() { return &plan_; }
    [[nodiscard]] Closure closure() const;
    [[nodiscard]] QString closureWords() const;
    [[nodiscard]] ChoiceList* suspects() { return &suspects_; }
    [[nodiscard]] const documents::JobDocument& document() const { return *document_; }
    [[nodiscard]] const site::Job& job() const { return document_->value; }

    /// A new job with the material, limits and rule sets of the one changed last; it is open then.
    Q_INVOKABLE bool newJob(const QString& name);
    Q_INVOKABLE bool openJob(const QString& id);
    Q_INVOKABLE void closeJob();

    /// A chain whose runs are of this kind to begin with, under a name of its own: "Hip 2".
    Q_INVOKABLE bool startChain(const QString& kind);
    /// The name with a number behind it if another chain has it.
    Q_INVOKABLE bool renameChain(const QString& name);
    Q_INVOKABLE bool removeChain();
    /// The run typed in `entry`: added behind the last one, or put in place of the one in hand.
    Q_INVOKABLE bool keepRun();
    Q_INVOKABLE bool removeRun();
    /// The length typed counts beside the measures there are.
    Q_INVOKABLE bool repeatMeasure();
    Q_INVOKABLE bool countMeasure(int measure);
    Q_INVOKABLE bool removeMeasure(int measure);
    /// The last run meets the first at the corner typed in `entry`.
    Q_INVOKABLE bool closeChain();
    Q_INVOKABLE bool openChain();
    /// A chimney or another thing in the roof that the chain goes round: its width along the ridge (empty:
    /// that of the headwall) and whether a cricket stands on its upper side.
    Q_INVOKABLE bool setObstacle(bool there, const QString& width, bool cricket);
    Q_INVOKABLE bool undo();
    Q_INVOKABLE bool redo();

    /// Commits one act. False, with failed() said and nothing changed, if it could not be kept.
    bool act(const char* kind, const QString& words, const std::function<void(site::Job&)>& change);
    /// The same for what a document carries beside the job.
    bool actOnDocument(const char* kind, const QString& words,
                       const std::function<void(documents::JobDocument&)>& change);
    /// Shows another run of the job, as a finding names it.
    void goTo(std::size_t chain, std::size_t run);

    /// Kinds, ends and everything shown, in the language that is spoken now.
    void sayAnew();

signals:
    void jobChanged();
    void runChanged();
    void failed(const QString& why);

private:
    bool step(store::Way way);
    bool take(documents::JobDocument document, store::KeptJob kept, store::UndoState undo);
    void refresh();
    void showSuspects(const site::Chain* chain);
    void refreshPlan();
    [[nodiscard]] const site::Chain* currentChain() const;
    /// The same, for a list that goes on showing it after the next act.
    [[nodiscard]] std::shared_ptr<const site::Chain> heldChain() const;
    [[nodiscard]] const site::Run* currentRun() const;
    void beginRun();
    [[nodiscard]] site::Job freshJob() const;

    const Tablet& tablet_;
    const Settings& settings_;
    /// Never changed: each act puts another in its place, and lists hold on to the one they show.
    std::shared_ptr<const documents::JobDocument> document_ = std::make_shared<documents::JobDocument>();
    store::KeptJob kept_;
    store::UndoState undo_;
    int chain_ = -1;
    int run_ = -1;
    site::ClosureReport report_;
    ChoiceList chains_;
    ChoiceList chainKinds_;
    RunList runs_;
    RunEntry entry_;
    ChoiceList measures_;
    PlanModel plan_;
    ChoiceList suspects_;
};

} // namespace lapwright::field
