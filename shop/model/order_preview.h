#pragma once

#include "acts/last_done.h"
#include "measure/writing.h"
#include "picture.h"
#include "pieces/order.h"
#include "rows_model.h"
#include "schedule/piece_life.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <memory>
#include <string>

namespace lapwright::model {

class Shop;

/// An order to look at: its plan, its profiles drawn, its pieces and what is to be known about them.
class OrderPreview : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by its desk")
    Q_PROPERTY(bool empty READ empty NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY changed FINAL)
    /// Of the whole house, or of the profile that is chosen.
    Q_PROPERTY(lapwright::look::Picture plan READ plan NOTIFY changed FINAL)
    Q_PROPERTY(lapwright::look::Picture profile READ profile NOTIFY profileChanged FINAL)
    Q_PROPERTY(QString currentProfile READ currentProfile WRITE setCurrentProfile NOTIFY profileChanged FINAL)
    Q_PROPERTY(lapwright::model::RowsModel* profiles READ profiles CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::RowsModel* pieces READ pieces CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::RowsModel* findings READ findings CONSTANT FINAL)

public:
    explicit OrderPreview(Shop& shop);

    void clear();
    /// `told` stands before the order's own findings: differences, reasons why it waits.
    /// `done` is what was done last to each mark.
    void show(std::shared_ptr<const pieces::Order> order, const rules::Findings& told,
              const std::map<std::string, acts::Done>& done = {});

    [[nodiscard]] bool empty() const { return order_->id.empty(); }
    /// Empty where none is shown.
    [[nodiscard]] const std::string& orderId() const { return order_->id; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] look::Picture plan() const { return plan_; }
    [[nodiscard]] look::Picture profile() const { return profile_; }
    [[nodiscard]] QString currentProfile() const { return currentProfile_; }
    void setCurrentProfile(const QString& id);
    [[nodiscard]] RowsModel* profiles() { return &profiles_; }
    [[nodiscard]] RowsModel* pieces() { return &pieces_; }
    [[nodiscard]] RowsModel* findings() { return &findings_; }

signals:
    void changed();
    void profileChanged();

private:
    void drawProfile();

    Shop& shop_;
    std::shared_ptr<const lapwright::pieces::Order> order_; ///< never nullptr
    look::Picture plan_;
    look::Picture profile_;
    QString currentProfile_;
    RowsModel profiles_;
    RowsModel pieces_;
    RowsModel findings_;
};

/// Findings as lines, the heaviest first.
[[nodiscard]] QList<Row> rowsOf(const rules::Findings& findings, const Style& style);

} // namespace lapwright::model
