#pragma once

#include "model/photo_list.h"
#include "model/take_off.h"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <vector>

namespace lapwright::field {

/// What the program tells about the job in hand, gravest first.
class CheckList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(int blocking READ blocking NOTIFY counted FINAL)
    /// Warnings without a reason given.
    Q_PROPERTY(int openWarnings READ openWarnings NOTIFY counted FINAL)
    /// A warning is in hand, to be given a reason; it stays there whatever rows move around it.
    Q_PROPERTY(bool inHand READ hasInHand NOTIFY inHandChanged FINAL)
    Q_PROPERTY(QString statementInHand READ statementInHand NOTIFY inHandChanged FINAL)
    Q_PROPERTY(QString reasonInHand READ reasonInHand NOTIFY inHandChanged FINAL)

public:
    enum class Weight { Informs, Warns, Blocks };
    Q_ENUM(Weight)
    enum Role {
        WeightRole = Qt::UserRole + 1,
        CodeRole,
        PlaceRole,
        TextRole,
        RemedyRole,
        ClauseRole,
        ReasonRole, ///< why a person goes on in spite of a warning; empty if they did not say
        HasPlaceRole,
        PhotosRole, ///< how many there are of it
        HelpRole    ///< why it matters and what to do
    };
    Q_ENUM(Role)

    CheckList(TakeOff& takeOff, const Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int blocking() const { return blocking_; }
    [[nodiscard]] int openWarnings() const { return openWarnings_; }
    [[nodiscard]] bool hasInHand() const { return inHand_.has_value(); }
    [[nodiscard]] QString statementInHand() const;
    [[nodiscard]] QString reasonInHand() const;

    /// Reads the findings of the job as it stands now. Screens call it when they come into view.
    Q_INVOKABLE void refresh();
    /// Takes the warning of a row in hand; puts it down for −1 or where there is none.
    Q_INVOKABLE void take(int row);
    /// The reason for going on in spite of the warning in hand; it travels with the order. An empty one
    /// takes it back.
    Q_INVOKABLE bool acknowledge(const QString& reason);
    /// Shows the photos of the finding in `row`.
    Q_INVOKABLE void showPhotos(int row, lapwright::field::PhotoList* photos) const;
    /// Shows the run of the finding in the job editor. False if it is of no run.
    Q_INVOKABLE bool goTo(int row);

signals:
    void counted();
    void inHandChanged();
    void failed(const QString& why);

private:
    void forget();
    [[nodiscard]] QString reasonOf(const rules::Finding& finding) const;

    TakeOff& takeOff_;
    const Settings& settings_;
    rules::Findings findings_;
    std::optional<rules::Finding> inHand_;
    int blocking_ = 0;
    int openWarnings_ = 0;
};

} // namespace lapwright::field
