#pragma once

#include "measure/result.h"
#include "pieces/takeoff.h"
#include "store/connection.h"
#include "store/pictures.h"

#include <QString>

#include <functional>
#include <future>
#include <string>
#include <vector>

namespace lapwright::field {

/// What differs from one minute and one tablet to the next, handed in so that tests can hold it still.
struct Surroundings {
    std::function<std::string()> now;   ///< ISO 8601, UTC, to the millisecond
    std::function<std::string()> newId; ///< a fresh UUID
    std::function<std::string()> today; ///< ISO 8601 date where the person is

    /// The machine's clock and random numbers.
    [[nodiscard]] static Surroundings real();
};

/// All that the view models work with: the tablet's database, its photos, the library, clock and chance.
class Tablet {
public:
    /// Opens the database (store/connection.h) and reads the library; shop folders as storage/library.h takes
    /// them. Errors: of both.
    [[nodiscard]] static Result<Tablet> open(const QString& databasePath,
                                             const std::vector<std::string>& shopFolders,
                                             Surroundings surroundings = Surroundings::real());
    /// The same with a library that is being read meanwhile (storage::loadCatalogueBeside).
    [[nodiscard]] static Result<Tablet> openBeside(const QString& databasePath,
                                                   std::future<Result<pieces::Catalogue>> reading,
                                                   Surroundings surroundings = Surroundings::real());

    [[nodiscard]] const store::Connection& database() const { return database_; }
    [[nodiscard]] const store::PictureFolder& pictures() const { return pictures_; }
    [[nodiscard]] const pieces::Catalogue& catalogue() const { return catalogue_; }
    [[nodiscard]] std::string now() const { return surroundings_.now(); }
    [[nodiscard]] std::string newId() const { return surroundings_.newId(); }
    [[nodiscard]] std::string today() const { return surroundings_.today(); }

private:
    Tablet(store::Connection database, pieces::Catalogue catalogue, Surroundings surroundings);

    store::Connection database_;
    store::PictureFolder pictures_;
    pieces::Catalogue catalogue_;
    Surroundings surroundings_;
};

} // namespace lapwright::field
