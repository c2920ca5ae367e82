#pragma once

#include "documents/shop.h"
#include "look/picture.h"
#include "model/choice_list.h"
#include "model/load_trust.h"
#include "model/plan_model.h"
#include "model/settings.h"
#include "model/tablet.h"

#include <QAbstractListModel>
#include <QImage>
#include <QtQml/qqmlregistration.h>

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::field {

/// One load as it is counted in: a row for each mark of each bundle. Every count is on the disk before the
/// row shows it.
class DeliveryCheck : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(lapwright::field::ChoiceList* loads READ loads CONSTANT FINAL)
    Q_PROPERTY(QString load READ load WRITE setLoad NOTIFY changed FINAL)
    Q_PROPERTY(QString truck READ truck NOTIFY changed FINAL)
    Q_PROPERTY(int expected READ expected NOTIFY changed FINAL)
    Q_PROPERTY(int received READ received NOTIFY changed FINAL)
    /// Short, damaged or wrong.
    Q_PROPERTY(int faulty READ faulty NOTIFY changed FINAL)
    /// Nobody said anything about them yet.
    Q_PROPERTY(int missing READ missing NOTIFY changed FINAL)
    /// Only rows that are not counted to the end.
    Q_PROPERTY(bool onlyMissing READ onlyMissing WRITE setOnlyMissing NOTIFY changed FINAL)
    /// Where the piece in hand goes, on the plan of its chain.
    Q_PROPERTY(lapwright::field::PlanModel* plan READ plan CONSTANT FINAL)
    Q_PROPERTY(QString placeWords READ placeWords NOTIFY placeChanged FINAL)
    /// A piece is in hand, to be counted; it stays there however the list is filtered.
    Q_PROPERTY(bool inHand READ hasInHand NOTIFY placeChanged FINAL)
    Q_PROPERTY(QString undoWords READ undoWords NOTIFY changed FINAL)
    /// What is to be said of the load list's signature; empty where it is good or a person took the list.
    Q_PROPERTY(QString trustWords READ trustWords NOTIFY changed FINAL)
    /// Nothing is counted until a person says that the list counts.
    Q_PROPERTY(bool questioned READ isQuestioned NOTIFY changed FINAL)
    /// The one who signed it may be trusted, once its code is compared.
    Q_PROPERTY(bool signerKnown READ isSignerKnown NOTIFY changed FINAL)

public:
    enum class Found { Received, Short, Damaged, Wrong };
    Q_ENUM(Found)
    enum Role {
        MarkRole = Qt::UserRole + 1,
        BundleRole,
        JobRole,
        RunRole,
        LengthRole,
        ExpectedRole,
        ReceivedRole,
        ShortRole,
        DamagedRole,
        WrongRole,
        LeftRole, ///< not counted yet
        NoteRole,
        HeavyRole,
        InHandRole
    };
    Q_ENUM(Role)

    DeliveryCheck(const Tablet& tablet, Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] ChoiceList* loads() { return &loads_; }
    [[nodiscard]] QString load() const;
    void setLoad(const QString& id);
    [[nodiscard]] QString truck() const;
    [[nodiscard]] int expected() const;
    [[nodiscard]] int received() const;
    [[nodiscard]] int faulty() const;
    [[nodiscard]] int missing() const;
    [[nodiscard]] bool onlyMissing() const { return onlyMissing_; }
    void setOnlyMissing(bool only);
    [[nodiscard]] PlanModel* plan() { return &plan_; }
    [[nodiscard]] bool hasInHand() const { return inHand_.has_value(); }
    [[nodiscard]] QString placeWords() const { return placeWords_; }
    [[nodiscard]] QString undoWords() const { return undoWords_; }
    [[nodiscard]] QString trustWords() const { return trust_.words; }
    [[nodiscard]] bool isQuestioned() const { return trust_.standing == LoadTrust::Standing::Doubtful; }
    [[nodiscard]] bool isSignerKnown() const { return !trust_.key.empty(); }

    Q_INVOKABLE void refresh();
    /// Begins anew: another file was put in the tablet's place.
    void reload();
    /// Takes a load list in and shows it; the same one again just shows it.
    Q_INVOKABLE bool openFile(const QString& path);
    /// The shop that signed the list is trusted from now on: a person compared its code.
    Q_INVOKABLE bool trustSigner();
    /// This list counts, whatever is to be said of its signature.
    Q_INVOKABLE bool acceptList();
    /// Takes the events of another tablet's receipt of a load that is here.
    Q_INVOKABLE bool mergeFile(const QString& path);
    /// Takes the piece of a row in hand and shows where it goes; puts it down for −1.
    Q_INVOKABLE void take(int row);
    /// So many of the piece in hand were found so.
    Q_INVOKABLE bool count(lapwright::field::DeliveryCheck::Found found, int pieces, const QString& note);
    /// Everything of a bundle that is not counted yet came.
    Q_INVOKABLE bool countBundle(const QString& label);
    /// The row of a mark, or a bundle's first row, as a label's code (schedule/label_text.h) or a person
    /// gives it, one that is still to count before others; every row is shown if it was not. −1, with
    /// failed() said, if it is not on the load.
    Q_INVOKABLE int rowOf(const QString& code);
    /// The row that the code on a photo of a label means (rowOf); −1, with failed() said, also if there is no
    /// code.
    Q_INVOKABLE int rowOnPicture(const QString& path);
    /// The same of what the camera sees; −1 and nothing said while it sees no code.
    Q_INVOKABLE int rowSeen(const QImage& seen);
    Q_INVOKABLE bool undo();
    /// Writes the receipt of everything counted so far into `folder`; its path, empty if it failed.
    Q_INVOKABLE QString writeReceipt(const QString& folder);

signals:
    void changed();
    void placeChanged();
    /// A person opened, counted, found or sent something, and it came about.
    void acted();
    void failed(const QString& why);

private:
    struct Row {
        std::size_t bundle = 0;
        schedule::LoadedPiece piece;
        std::array<std::int64_t, 4> found{};
        std::string note;

        [[nodiscard]] std::int64_t counted() const { return found[0] + found[1] + found[2] + found[3]; }
        [[nodiscard]] std::int64_t left() const { return piece.count - counted(); }
    };
    bool keep(const std::vector<schedule::ReceiptEvent>& events);
    /// False, and said, as long as the list is questioned.
    bool mayCount();
    void readTrust(const std::string& text);
    /// Whether another list of a load that is here may be shown in its place. False, and said, if not.
    bool standIn(const schedule::Load& load, const std::string& text);
    [[nodiscard]] std::optional<std::size_t> meantBy(const QString& typed) const; ///< of rows_
    void putDown();
    void showInHand();
    void showPlace(const Row& row);
    void readLoad(const std::string& text);
    void readEvents();
    void showLoads();
    void filter();
    [[nodiscard]] schedule::ReceiptEvent eventOf(const Row& row, Found found, std::int64_t pieces,
                                                 const QString& note) const;
    [[nodiscard]] const Row& at(int row) const { return rows_[shown_[static_cast<std::size_t>(row)]]; }
    [[nodiscard]] std::int64_t sum(std::int64_t (*of)(const Row&)) const;

    const Tablet& tablet_;
    Settings& settings_;
    ChoiceList loads_;
    schedule::Load load_;
    std::vector<Row> rows_;
    std::vector<std::size_t> shown_;
    std::optional<std::size_t> inHand_; ///< of rows_
    bool onlyMissing_ = false;
    PlanModel plan_;
    QString placeWords_;
    QString undoWords_;
    LoadTrust trust_;
};

} // namespace lapwright::field
