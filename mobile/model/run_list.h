#pragma once

#include "look/row_changes.h"
#include "measure/writing.h"
#include "site/chain.h"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace lapwright::field {

/// The runs of one chain as a list for a screen.
class RunList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    enum Role {
        IdRole = Qt::UserRole + 1,
        KindRole,
        LengthRole,
        CornerRole, ///< of the corner after the run
        SpreadRole, ///< of repeated measures; empty without
        EnteredRole,
        TrimsRole
    };
    Q_ENUM(Role)

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return chain_ ? static_cast<int>(chain_->runs.size()) : 0; }

    /// Null for no chain. It is held on to, and must not change.
    void show(std::shared_ptr<const site::Chain> chain, const Style& style);

signals:
    void countChanged();

private:
    [[nodiscard]] QString cornerWords(std::size_t run) const;
    void sayChanges(const site::Chain& before, const look::RowChanges& changes, bool all);

    std::shared_ptr<const site::Chain> chain_;
    Style style_;
};

/// "square, outside", "square, inside", "135°", or what a taped corner comes to; empty if it cannot be.
[[nodiscard]] QString cornerInWords(const site::Corner& corner);

} // namespace lapwright::field
