#pragma once

#include "measure/result.h"
#include "pieces/order.h"
#include "print/confirmation.h"
#include "print/label.h"
#include "print/load_papers.h"
#include "print/page.h"
#include "print/paper.h"
#include "print/sheet.h"

#include <QObject>
#include <QString>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::model {

class Shop;

/// The papers of an order, a cut plan or a load, written as PDF into a folder that a person names. Paper,
/// labels and angles are those chosen in Settings. Files are named by what they are; one of the same name is
/// replaced.
class Papers : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")

public:
    explicit Papers(Shop& shop);

    /// Confirmation, with the cost where the shop keeps rates and Settings want it, quality sheet and labels
    /// of its pieces.
    Q_INVOKABLE void printOrder(const QString& order, const QUrl& folder);
    /// The label of one mark of it alone.
    Q_INVOKABLE void printMark(const QString& order, const QString& mark, const QUrl& folder);
    /// Cut ticket, and labels of the remnants to keep. `sheet` is one of the Cutting screen.
    Q_INVOKABLE void printCut(const QString& sheet, const QUrl& folder);
    /// Labels of the remnants that lie at the shear without one.
    Q_INVOKABLE void printRemnants(const QUrl& folder);
    /// The label of one remnant on the racks.
    Q_INVOKABLE void printRemnant(const QString& key, const QUrl& folder);
    /// Load list, check sheet for a crew lead without a tablet, labels of its bundles.
    Q_INVOKABLE void printLoad(const QString& load, const QUrl& folder);
    /// The label of one of its bundles alone: `bundle` is one of the Loads screen.
    Q_INVOKABLE void printBundle(const QString& load, const QString& bundle, const QUrl& folder);

private:
    struct Paper {
        std::string name; ///< of the file, without its ending
        std::string title;
        std::vector<print::Page> pages;
    };

    [[nodiscard]] print::Printing printing() const;
    [[nodiscard]] static Paper paperOf(const char* name, const print::Sheet& sheet,
                                       const print::Paper& paper);
    [[nodiscard]] Paper labelsOf(const char* name, const char* title, const std::vector<print::Label>& labels,
                                 const print::Paper& paper) const;
    /// What cannot be written is told, and false returned.
    bool write(const QUrl& folder, const std::vector<Paper>& papers);
    /// What it costs; nothing where that is not asked for. Errors: rates that do not hold, or have no price
    /// for a metal of the order.
    [[nodiscard]] Result<std::optional<schedule::Cost>> costOf(const pieces::Order& order) const;
    /// Calls `use` with the load and what its papers know of its orders.
    void withLoad(const QString& load,
                  const std::function<void(const schedule::Load&, const print::LoadedOrders&)>& use);

    Shop& shop_;
};

} // namespace lapwright::model
