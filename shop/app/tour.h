#pragma once

#include "message_count.h"

#include <QString>
#include <QStringList>

class QQuickWindow;

namespace lapwright::model {
class Draft;
class ReferenceShelf;
class Shop;
class StockDesk;
} // namespace lapwright::model

namespace lapwright::shop_app {

/// Shows every screen at every size, keeps pictures of them, and knows what a person could not read there and
/// whether Qt warned of anything meanwhile. One at a time: it listens to Qt's messages as long as it lives.
class Tour {
public:
    /// `pictures` is the folder for the pictures; empty: none are kept.
    explicit Tour(QString pictures);

    /// What is wrong, a line each: a screen that does not show, a picture that could not be kept, words that
    /// are cut off or lie on others, what Qt warned of.
    [[nodiscard]] QStringList walk(QQuickWindow& window, model::Shop& shop) const;

private:
    [[nodiscard]] QStringList visit(QQuickWindow& window, model::Shop& shop, const QString& sight) const;
    /// The other sheets of the order that Arrivals shows.
    [[nodiscard]] QStringList visitOrder(QQuickWindow& window, const QString& sight) const;
    /// The words that a screen folds, whole.
    [[nodiscard]] QStringList visitFolded(QQuickWindow& window, const QString& name) const;
    /// Each kind of reference data, and a document of it open to be changed.
    [[nodiscard]] QStringList visitDrafts(QQuickWindow& window, model::ReferenceShelf& shelf,
                                          const QString& sight) const;
    /// An item of the stock open to be changed, if there is one, and a new one.
    [[nodiscard]] QStringList visitStock(QQuickWindow& window, model::StockDesk& desk,
                                         const QString& sight) const;
    /// The draft that `name` opened, which is left again.
    [[nodiscard]] QStringList seeDraft(QQuickWindow& window, model::Draft& draft, const QString& name) const;
    [[nodiscard]] QStringList see(QQuickWindow& window, const QString& name) const;

    look::MessageCount counting_;
    QString pictures_;
};

} // namespace lapwright::shop_app
