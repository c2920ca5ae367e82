#pragma once

#include "desk.h"
#include "rows_model.h"

#include <QString>
#include <QUrl>

namespace lapwright::model {

/// What goes on the trucks, what came back from them, and what is made again.
class Loads : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(lapwright::model::RowsModel* loads READ loads CONSTANT FINAL)
    /// The bundles of the current load.
    Q_PROPERTY(lapwright::model::RowsModel* bundles READ bundles CONSTANT FINAL)
    /// Folded and waiting for a truck.
    Q_PROPERTY(lapwright::model::RowsModel* ready READ ready CONSTANT FINAL)
    /// Found short, damaged or wrong, and not yet ordered again.
    Q_PROPERTY(lapwright::model::RowsModel* remakes READ remakes CONSTANT FINAL)
    Q_PROPERTY(QString current READ current WRITE setCurrent NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY currentChanged FINAL)

public:
    explicit Loads(Shop& shop);

    [[nodiscard]] RowsModel* loads() { return &loads_; }
    [[nodiscard]] RowsModel* bundles() { return &bundles_; }
    [[nodiscard]] RowsModel* ready() { return &ready_; }
    [[nodiscard]] RowsModel* remakes() { return &remakes_; }
    [[nodiscard]] QString current() const { return current_; }
    void setCurrent(const QString& id);
    [[nodiscard]] QString summary() const { return summary_; }

    /// Ties all that is folded into bundles and makes one load of it.
    Q_INVOKABLE void makeLoad(const QString& truck);
    /// Writes the current load's document, what the crew lead checks the delivery against.
    Q_INVOKABLE void saveLoad(const QUrl& file);
    Q_INVOKABLE void takeReceipt(const QUrl& file);
    Q_INVOKABLE void remakeAll();

signals:
    void currentChanged();

protected:
    void reload() override;

private:
    void showBundles();

    RowsModel loads_;
    RowsModel bundles_;
    RowsModel ready_;
    RowsModel remakes_;
    QString current_;
    QString summary_;
};

} // namespace lapwright::model
