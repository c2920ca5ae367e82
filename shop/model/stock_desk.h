#pragma once

#include "acts/shop_stock.h"
#include "desk.h"
#include "rows_model.h"

#include <QString>
#include <QUrl>

#include <cstdint>
#include <vector>

namespace lapwright::model {

/// What stands on the racks: sheets, coils, remnants.
class StockDesk : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(lapwright::model::RowsModel* items READ items CONSTANT FINAL)
    Q_PROPERTY(QString current READ current WRITE setCurrent NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString title READ title NOTIFY currentChanged FINAL)
    /// Sheets of the current item; -1: as many as needed, or not counted in sheets.
    Q_PROPERTY(int count READ count NOTIFY currentChanged FINAL)
    /// How much of the current item waiting plans will take; empty: nothing.
    Q_PROPERTY(QString reserved READ reserved NOTIFY currentChanged FINAL)
    /// The current item may be taken off the shelf by hand.
    Q_PROPERTY(bool isRemnant READ isRemnant NOTIFY currentChanged FINAL)

public:
    explicit StockDesk(Shop& shop);

    [[nodiscard]] RowsModel* items() { return &items_; }
    [[nodiscard]] QString current() const { return current_; }
    void setCurrent(const QString& key);
    [[nodiscard]] QString title() const { return current_; }
    [[nodiscard]] int count() const;
    [[nodiscard]] QString reserved() const;
    [[nodiscard]] bool isRemnant() const;

    /// Counted by hand: so many sheets of the current item stand there.
    Q_INVOKABLE void setCount(int count);
    /// The current remnant is not there any more.
    Q_INVOKABLE void removeRemnant();
    /// Puts a stock document in place of what is kept.
    Q_INVOKABLE void importStock(const QUrl& file);
    Q_INVOKABLE void exportStock(const QUrl& file);

signals:
    void currentChanged();

protected:
    void reload() override;

private:
    /// Nullptr if there is no such item.
    [[nodiscard]] const acts::StockRow* item() const;
    void correct(std::int64_t count, const QString& told);

    RowsModel items_;
    QString current_;
    std::vector<acts::StockRow> stock_;
};

} // namespace lapwright::model
