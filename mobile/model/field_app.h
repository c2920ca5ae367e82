#pragma once

#include "model/check_list.h"
#include "model/delivery_check.h"
#include "model/handing_on.h"
#include "model/job_editor.h"
#include "model/job_form.h"
#include "model/job_list.h"
#include "model/order_model.h"
#include "model/photo_list.h"
#include "model/settings.h"
#include "model/tablet.h"
#include "model/take_off.h"
#include "model/trim_model.h"
#include "parcel/parcel.h"

#include <QObject>
#include <QTimer>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace lapwright::field {

/// Everything the screens show, in one hand.
class FieldApp : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(lapwright::field::Settings* settings READ settings CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::JobList* jobs READ jobs CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::JobEditor* editor READ editor CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::JobForm* form READ form CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::TrimModel* trim READ trim CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::PhotoList* photos READ photos CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::CheckList* check READ check CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::OrderModel* order READ order CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::DeliveryCheck* delivery READ delivery CONSTANT FINAL)
    /// What was taken in last was a load or a receipt, not a job.
    Q_PROPERTY(bool openedDelivery READ openedDelivery NOTIFY opened FINAL)
    /// The QML file that shows what the tablet's camera sees (Viewfinder.qml); empty where there is none.
    Q_PROPERTY(QUrl viewfinder READ viewfinder WRITE setViewfinder NOTIFY viewfinderChanged FINAL)
    /// A file that was written can be given to the system's share sheet, or else its folder can be shown.
    Q_PROPERTY(bool shares READ shares NOTIFY handingOnChanged FINAL)
    Q_PROPERTY(bool showsFolders READ showsFolders NOTIFY handingOnChanged FINAL)
    /// What went wrong last, until the person has seen it; a refusal, until the next act that succeeds.
    Q_PROPERTY(QString message READ message NOTIFY messageChanged FINAL)

public:
    explicit FieldApp(const Tablet& tablet, QObject* parent = nullptr);

    [[nodiscard]] Settings* settings() { return &settings_; }
    [[nodiscard]] JobList* jobs() { return &jobs_; }
    [[nodiscard]] JobEditor* editor() { return &editor_; }
    [[nodiscard]] JobForm* form() { return &form_; }
    [[nodiscard]] TrimModel* trim() { return &trim_; }
    [[nodiscard]] PhotoList* photos() { return &photos_; }
    [[nodiscard]] CheckList* check() { return &check_; }
    [[nodiscard]] OrderModel* order() { return &order_; }
    [[nodiscard]] DeliveryCheck* delivery() { return &delivery_; }
    [[nodiscard]] bool openedDelivery() const { return openedDelivery_; }
    [[nodiscard]] QUrl viewfinder() const { return viewfinder_; }
    void setViewfinder(const QUrl& viewfinder);
    [[nodiscard]] bool shares() const { return handingOn_.way == HandingOn::Way::Share; }
    [[nodiscard]] bool showsFolders() const { return handingOn_.way == HandingOn::Way::ShowFolder; }
    void setHandingOn(HandingOn way);
    [[nodiscard]] QString message() const { return message_; }

    Q_INVOKABLE void seen();
    /// Shares the file or shows its folder; says so if nothing on this system does.
    Q_INVOKABLE void handOn(const QString& path);
    /// Takes in a job, an order or a load list by what it says it is. A job that is here already and differs
    /// comes in beside it, as a copy. True if something is shown now.
    Q_INVOKABLE bool openFile(const QString& path);
    /// Everything on this tablet in one file in `folder`; its path, empty if it could not be written.
    Q_INVOKABLE QString backUp(const QString& folder);
    /// Everything as the backup has it. The path of what was here before (store::restore), empty if nothing
    /// was restored.
    Q_INVOKABLE QString restore(const QString& path);
    /// An invented house, walked and closed, to try everything on; it is open then.
    Q_INVOKABLE bool openSample();

    /// Everything that was put into words, again: the language changed.
    void sayAnew();

signals:
    void messageChanged();
    void viewfinderChanged();
    void handingOnChanged();
    void opened();
    void sampleOpened();
    void failed(const QString& why);

private:
    /// Stands until it is seen.
    void say(const QString& message);
    /// Why an act came to nothing: stands until it is seen or the next act succeeds.
    void refuse(const QString& why);
    void forgetRefusal();
    bool takeInJob(documents::JobDocument job);
    bool takeInOrder(const parcel::Parcel& parcel);

    const Tablet& tablet_;
    Settings settings_;
    JobList jobs_;
    JobEditor editor_;
    JobForm form_;
    TakeOff takeOff_;
    TrimModel trim_;
    PhotoList photos_;
    CheckList check_;
    OrderModel order_;
    DeliveryCheck delivery_;
    /// Nobody has done anything for a while.
    QTimer pause_;
    bool openedDelivery_ = false;
    QUrl viewfinder_;
    HandingOn handingOn_;
    QString message_;
    bool refused_ = false;
};

} // namespace lapwright::field
