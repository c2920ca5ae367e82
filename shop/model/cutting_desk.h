#pragma once

#include "desk.h"
#include "documents/cut.h"
#include "measure/result.h"
#include "picture.h"
#include "remnants_to_label.h"
#include "rows_model.h"
#include "site/job.h"
#include "storage/shop_state.h"

#include <QString>

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::model {

/// The sheets to cut, one after the other, for the person at the shear or slitter. A sheet is ticked when it
/// is cut, and every station sees that; when the last one of a metal is ticked, the whole plan counts as cut.
class CuttingDesk : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(lapwright::model::RowsModel* sheets READ sheets CONSTANT FINAL)
    /// The strips of the current sheet, in the order they are cut.
    Q_PROPERTY(lapwright::model::RowsModel* strips READ strips CONSTANT FINAL)
    /// What the sheets cut at this station left, until it has its labels.
    Q_PROPERTY(lapwright::model::RowsModel* toLabel READ toLabel CONSTANT FINAL)
    Q_PROPERTY(QString current READ current WRITE setCurrent NOTIFY currentChanged FINAL)
    /// A strip of the current sheet; empty: none is chosen.
    Q_PROPERTY(QString currentStrip READ currentStrip WRITE setCurrentStrip NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString title READ title NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString material READ material NOTIFY currentChanged FINAL)
    Q_PROPERTY(QColor swatch READ swatch NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString position READ position NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString remnants READ remnants NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY currentChanged FINAL)
    Q_PROPERTY(bool ticked READ ticked NOTIFY currentChanged FINAL)
    /// "cut 2026-11-26 10:32 by Ann, shear"; empty: the current sheet is not ticked.
    Q_PROPERTY(QString tickedBy READ tickedBy NOTIFY currentChanged FINAL)
    /// Every sheet of the current plan is ticked, but it does not count as cut: that could not be done.
    Q_PROPERTY(bool unfinished READ unfinished NOTIFY currentChanged FINAL)
    Q_PROPERTY(lapwright::look::Picture map READ map NOTIFY currentChanged FINAL)

public:
    explicit CuttingDesk(Shop& shop);

    [[nodiscard]] RowsModel* sheets() { return &sheets_; }
    [[nodiscard]] RowsModel* strips() { return &strips_; }
    [[nodiscard]] RowsModel* toLabel() { return &toLabel_; }
    [[nodiscard]] const RemnantsToLabel& remnantsToLabel() const { return remnants_; }
    [[nodiscard]] QString current() const { return current_; }
    void setCurrent(const QString& id);
    [[nodiscard]] QString currentStrip() const { return currentStrip_; }
    void setCurrentStrip(const QString& strip);
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString material() const;
    [[nodiscard]] QColor swatch() const;
    [[nodiscard]] QString position() const;
    [[nodiscard]] QString remnants() const;
    [[nodiscard]] QString summary() const;
    [[nodiscard]] bool ticked() const;
    [[nodiscard]] QString tickedBy() const;
    [[nodiscard]] bool unfinished() const;
    [[nodiscard]] look::Picture map() const { return map_; }

    /// To the sheet before (-1) or after (+1); stays at the ends.
    Q_INVOKABLE void step(int by);
    /// Ticks the current sheet as cut and goes to the next that is not; ticked already: takes the tick back.
    Q_INVOKABLE void tick();
    /// Says once more that the current plan, ticked as a whole, is cut.
    Q_INVOKABLE void finish();
    /// One sheet of the current kind is cut, but its chosen strip is spoilt: with what is ticked it counts as
    /// cut, the pieces of the strip are ordered again, and all that is left is planned anew.
    Q_INVOKABLE void stripSpoilt();
    /// All remnants that lie there have their labels.
    Q_INVOKABLE void labelled();

signals:
    void currentChanged();

protected:
    void reload() override;

private:
    struct Sheet {
        QString id;
        std::size_t plan = 0;
        std::size_t pattern = 0;
    };
    struct Plan {
        std::string id;
        site::Material material;
        documents::CutPlan cut;
        std::optional<cutting::Problem> problem; ///< missing: the plan does not pass its check
        std::vector<std::string> names;          ///< what each blank is called on the map
    };

    void readPlans();
    /// Read and checked once for each plan: a plan that is kept never changes.
    [[nodiscard]] static Result<Plan> read(const storage::StoredPlan& stored);
    void showRows();
    void showCurrent();
    [[nodiscard]] const Sheet* sheet() const;
    /// Who ticked it; nullptr if nobody did.
    [[nodiscard]] const storage::Stamp* tickOf(const Sheet& sheet) const;
    [[nodiscard]] bool isTicked(const Sheet& sheet) const;
    void finishPlan(std::string plan);
    void showToLabel();

    RowsModel sheets_;
    RowsModel strips_;
    RowsModel toLabel_;
    RemnantsToLabel remnants_;
    QString current_;
    QString currentStrip_;
    std::vector<Plan> plans_;
    std::vector<Sheet> order_;
    std::map<std::string, std::map<std::size_t, storage::Stamp>> ticked_; ///< patterns, by plan
    look::Picture map_;
};

} // namespace lapwright::model
