#include "model/tablet.h"

#include "storage/catalogue.h"

#include <QDateTime>
#include <QUuid>

#include <utility>

namespace lapwright::field {

Surroundings Surroundings::real()
{
    return {[] { return QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString(); },
            [] { return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString(); },
            [] { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }};
}

Result<Tablet> Tablet::open(const QString& databasePath, const std::vector<std::string>& shopFolders,
                            Surroundings surroundings)
{
    return openBeside(databasePath, storage::loadCatalogueBeside(shopFolders), std::move(surroundings));
}

Result<Tablet> Tablet::openBeside(const QString& databasePath, std::future<Result<pieces::Catalogue>> reading,
                                  Surroundings surroundings)
{
    auto database = store::Connection::open(databasePath);
    auto catalogue = reading.get();
    if (!catalogue.ok())
        return catalogue.errors();
    if (!database.ok())
        return database.errors();
    return Tablet(*std::move(database), *std::move(catalogue), std::move(surroundings));
}

Tablet::Tablet(store::Connection database, pieces::Catalogue catalogue, Surroundings surroundings)
    : database_(std::move(database)), pictures_(database_.path()), catalogue_(std::move(catalogue)),
      surroundings_(std::move(surroundings))
{
}

} // namespace lapwright::field
