#pragma once

#include "look/picture.h"
#include "model/choice_list.h"
#include "model/take_off.h"
#include "pieces/summary.h"

#include <QAbstractListModel>
#include <QColor>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <string>
#include <vector>

namespace lapwright::field {

/// Pieces of an order, alike ones together; in the order of their profiles.
class PieceList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")

public:
    enum Role {
        MarksRole = Qt::UserRole + 1,
        FirstMarkRole,
        RunRole,
        ProfileRole, ///< "P1", for sections
        TrimRole,
        LengthRole,
        CountRole,
        MassRole,
        HandRole
    };
    Q_ENUM(Role)

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    void show(const pieces::Order& order, const Style& style);
    /// The mark of the first piece of a row; empty if there is no such row.
    [[nodiscard]] std::string firstMark(int row) const;

private:
    struct Row {
        pieces::PieceLine line;
        QString profile;
        QString trim;
    };
    std::vector<Row> rows_;
    Style style_;
};

/// Profiles of an order, each with its picture.
class ProfileList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")

public:
    enum Role {
        IdRole = Qt::UserRole + 1,
        TrimRole,
        GirthRole,
        MaterialRole,
        PiecesRole,
        LapRole,
        RunRole,      ///< the first that has it
        TemplateRole, ///< id of the trim in the library
        ColourRole,
        PictureRole
    };
    Q_ENUM(Role)

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    void show(const pieces::Order& order, const pieces::Catalogue& catalogue, const Style& style);

private:
    struct Row {
        QString id;
        QString trim;
        QString girth;
        QString material;
        QString lap;
        QString run;
        QString templateId;
        std::int64_t pieces = 0;
        QColor colour;
        look::Picture picture;
    };
    std::vector<Row> rows_;
};

/// The order of the job in hand: what it comes to, what changed since it was sent, and the way out.
class OrderModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(lapwright::field::PieceList* pieces READ pieces CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::ProfileList* profiles READ profiles CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::ChoiceList* accessories READ accessories CONSTANT FINAL)
    /// What is not as it was when it was sent; empty before the first time.
    Q_PROPERTY(lapwright::field::ChoiceList* changes READ changes CONSTANT FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(QString mass READ mass NOTIFY changed FINAL)
    Q_PROPERTY(int revision READ revision NOTIFY changed FINAL)
    /// The shop has been sent just this.
    Q_PROPERTY(bool sent READ isSent NOTIFY changed FINAL)
    Q_PROPERTY(int blocking READ blocking NOTIFY changed FINAL)
    Q_PROPERTY(int openWarnings READ openWarnings NOTIFY changed FINAL)
    /// 0 full lengths and a remainder, 1 equal lengths, 2 stock lengths cut on site.
    Q_PROPERTY(int policy READ policy WRITE setPolicy NOTIFY changed FINAL)
    Q_PROPERTY(int spares READ spares WRITE setSpares NOTIFY changed FINAL)
    Q_PROPERTY(int photos READ photos NOTIFY changed FINAL)
    /// Photos whose file is no longer on this tablet.
    Q_PROPERTY(int photosMissing READ photosMissing NOTIFY changed FINAL)
    /// "larkfield-house-r2.order.json", or ".zip" with photos.
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed FINAL)
    /// Where the order was last written to.
    Q_PROPERTY(QString writtenTo READ writtenTo NOTIFY changed FINAL)

public:
    OrderModel(TakeOff& takeOff, Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] PieceList* pieces() { return &pieces_; }
    [[nodiscard]] ProfileList* profiles() { return &profiles_; }
    [[nodiscard]] ChoiceList* accessories() { return &accessories_; }
    [[nodiscard]] ChoiceList* changes() { return &changes_; }
    [[nodiscard]] int count() const { return static_cast<int>(totals_.pieces); }
    [[nodiscard]] QString mass() const;
    [[nodiscard]] int revision() const { return revision_; }
    [[nodiscard]] bool isSent() const { return sent_; }
    [[nodiscard]] int blocking() const { return blocking_; }
    [[nodiscard]] int openWarnings() const { return openWarnings_; }
    [[nodiscard]] int policy() const;
    void setPolicy(int policy);
    [[nodiscard]] int spares() const;
    void setSpares(int spares);
    [[nodiscard]] int photos() const;
    [[nodiscard]] int photosMissing() const;
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] QString writtenTo() const { return writtenTo_; }

    /// Takes the job off as it stands now. Screens call it when they come into view.
    Q_INVOKABLE void refresh();
    /// Why the first piece of a row of pieces() is as it is, a line each, indented by what follows from what.
    Q_INVOKABLE [[nodiscard]] QString why(int row);
    /// Writes the order into `folder` under fileName(), with a number behind it if another order has that
    /// name, and keeps it as sent. False, with failed() said, if it must not go (something blocks) or could
    /// not be written; then nothing is kept as sent.
    Q_INVOKABLE bool send(const QString& folder);

signals:
    void changed();
    void sent();
    void failed(const QString& why);

private:
    void show(const pieces::Order& order);
    void showAccessories(const pieces::Order& order);
    [[nodiscard]] Result<std::string> packed(const documents::OrderDocument& order) const;
    bool writeTo(const QString& path);
    /// The two parts of fileName().
    [[nodiscard]] QString stem() const;
    [[nodiscard]] QString ending() const;

    TakeOff& takeOff_;
    Settings& settings_;
    PieceList pieces_;
    ProfileList profiles_;
    ChoiceList accessories_;
    ChoiceList changes_;
    pieces::Totals totals_;
    int revision_ = 1;
    bool sent_ = false;
    int blocking_ = 0;
    int openWarnings_ = 0;
    QString writtenTo_;
};

} // namespace lapwright::field
