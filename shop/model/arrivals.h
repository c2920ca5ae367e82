#pragma once

#include "acts/drop_folder.h"
#include "desk.h"
#include "order_at_hand.h"
#include "order_preview.h"
#include "rows_model.h"
#include "storage/lists.h"

#include <QFileSystemWatcher>
#include <QList>
#include <QString>
#include <QTimer>
#include <QUrl>

#include <string>
#include <vector>

namespace lapwright::model {

/// Orders as they come in: those that wait for a person first, then those that count.
class Arrivals : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(lapwright::model::RowsModel* orders READ orders CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::OrderPreview* preview READ preview CONSTANT FINAL)
    Q_PROPERTY(QString current READ current WRITE setCurrent NOTIFY currentChanged FINAL)
    /// The current one waits for a person's word.
    Q_PROPERTY(bool currentWaits READ currentWaits NOTIFY currentChanged FINAL)
    /// The current one is kept out of every plan.
    Q_PROPERTY(bool currentHeld READ currentHeld NOTIFY currentChanged FINAL)
    Q_PROPERTY(int waiting READ waiting NOTIFY waitingChanged FINAL)

public:
    explicit Arrivals(Shop& shop);

    [[nodiscard]] RowsModel* orders() { return &orders_; }
    [[nodiscard]] OrderPreview* preview() const { return preview_; }
    [[nodiscard]] QString current() const { return current_; }
    void setCurrent(const QString& id);
    [[nodiscard]] bool currentWaits() const;
    [[nodiscard]] bool currentHeld() const { return currentHeld_; }
    [[nodiscard]] int waiting() const { return static_cast<int>(waiting_.size()); }

    /// Takes order files in: dropped on the window, picked, or named on the command line.
    Q_INVOKABLE void takeFiles(const QList<QUrl>& files);
    /// Takes the waiting revision although pieces already begun become scrap.
    Q_INVOKABLE void acceptCurrent();
    /// The waiting revision is not taken: it is kept, but waits no longer.
    Q_INVOKABLE void dismissCurrent();
    /// Keeps the current order out of every plan, or lets it in again; plans that cut it are taken back.
    Q_INVOKABLE void holdCurrent(bool held);
    /// What is to be asked of the installer, as text for a message.
    Q_INVOKABLE [[nodiscard]] QString question() const;
    /// Lists what the search finds among all that ever was; done by itself a moment after the last key.
    void searchHistory();
    /// Puts `text` where the system pastes from.
    Q_INVOKABLE void copy(const QString& text);

signals:
    void currentChanged();
    void waitingChanged();

protected:
    void reload() override;

private:
    /// Where order files come from. What the folder brings never goes before what a person looks at.
    enum class Source { Person, Folder };
    [[nodiscard]] bool takeAll(const QStringList& paths, Source source);
    void take(const QString& path, Source source, QStringList& said, bool& trouble);
    /// Nullptr if the current one does not wait.
    [[nodiscard]] const storage::WaitingOrder* currentWaiting() const;
    /// Reads what waits and what is not finished.
    void readStanding();
    void showOrders();
    void showPreview();
    void showWaiting(const storage::WaitingOrder& waits);
    void showKept(const std::string& order);
    void watchFolder();
    void lookIntoFolder();

    RowsModel orders_;
    OrderAtHand atHand_;
    OrderPreview* preview_;
    QString current_;
    bool currentHeld_ = false;
    std::vector<storage::WaitingOrder> waiting_;
    QList<Row> standing_;
    QTimer search_;  ///< between the last key and the look through the history
    QString folder_; ///< that is watched; empty: none
    acts::DropFolder drops_;
    QTimer look_;
    QFileSystemWatcher nudge_; ///< a look at once where the system tells; the timer looks where it does not
    QString folderTrouble_;    ///< said already, and not again with every look
};

} // namespace lapwright::model
