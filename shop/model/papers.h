#pragma once

#include "print/label.h"
#include "print/page.h"
#include "print/paper.h"
#include "print/sheet.h"

#include <QObject>
#include <QString>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

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

    /// Confirmation, quality sheet and labels of its pieces.
    Q_INVOKABLE void printOrder(const QString& order, const QUrl& folder);
    /// Cut ticket, and labels of the remnants to keep. `sheet` is one of the Cutting screen.
    Q_INVOKABLE void printCut(const QString& sheet, const QUrl& folder);
    /// Load list, check sheet for a crew lead without a tablet, labels of its bundles.
    Q_INVOKABLE void printLoad(const QString& load, const QUrl& folder);

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
    /// What cannot be written is told.
    void write(const QUrl& folder, const std::vector<Paper>& papers);

    Shop& shop_;
};

} // namespace lapwright::model
