#pragma once

#include "acts/shop_stock.h"
#include "desk.h"
#include "draft.h"
#include "rows_model.h"

#include <QString>
#include <QUrl>

#include <optional>
#include <string>
#include <vector>

namespace lapwright::model {

/// What stands on the racks: sheets, coils, remnants; counted, described, put there and taken off.
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
    /// What is left on the current coil; empty where it is none.
    Q_PROPERTY(QString lengthLeft READ lengthLeft NOTIFY currentChanged FINAL)
    /// Why the current item cannot be taken off the racks, beside what this person may do; empty: it can.
    Q_PROPERTY(QString whyNotTakeOff READ whyNotTakeOff NOTIFY currentChanged FINAL)
    /// The item that is changed or new.
    Q_PROPERTY(lapwright::model::Draft* draft READ draft CONSTANT FINAL)

public:
    explicit StockDesk(Shop& shop);

    [[nodiscard]] RowsModel* items() { return &items_; }
    [[nodiscard]] QString current() const { return current_; }
    void setCurrent(const QString& key);
    [[nodiscard]] QString title() const;
    [[nodiscard]] int count() const;
    [[nodiscard]] QString reserved() const;
    [[nodiscard]] bool isRemnant() const;
    [[nodiscard]] QString lengthLeft() const;
    [[nodiscard]] QString whyNotTakeOff() const;
    [[nodiscard]] Draft* draft() const { return draft_; }

    /// Counted by hand: so many sheets of the current item stand there.
    Q_INVOKABLE void setCount(int count);
    /// Measured by hand: so much is left on the current coil. What is wrong with what was typed; empty:
    /// nothing.
    Q_INVOKABLE QString setLengthLeft(const QString& entered);
    /// Opens a new item to be filled in, alike to the current one but for its name.
    Q_INVOKABLE void addItem();
    /// Opens the current item to be changed.
    Q_INVOKABLE void changeItem();
    /// Takes the current item off the racks, whatever is left of it.
    Q_INVOKABLE void takeOff();
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
    [[nodiscard]] const acts::StockRow* item(const QString& key) const;
    [[nodiscard]] const acts::StockRow* item() const { return item(current_); }
    void correct(const acts::Count& counted, const QString& told);
    void begin(const QString& title, const std::optional<schedule::StockItem>& before,
               const std::string& text);

    RowsModel items_;
    QString current_;
    std::vector<acts::StockRow> stock_;
    Draft* draft_;
};

} // namespace lapwright::model
