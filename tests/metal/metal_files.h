#pragma once

#include "measure/rounding.h"
#include "metal/metal.h"
#include "source_directory.h"

#include <QDir>
#include <QFile>

#include <nlohmann/json.hpp>

#include <map>
#include <string>

/// The shipped metal files, read without the program's own reader so that a fault in it cannot hide one in
/// them.
namespace metal_files {

inline std::map<std::string, nlohmann::json> all()
{
    std::map<std::string, nlohmann::json> files;
    const QDir folder(QString::fromStdString(sourceDirectory() + "/shared-core/metal-library"));
    for (const QString& name : folder.entryList({"*.json"}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (file.open(QIODevice::ReadOnly))
            files[name.chopped(5).toStdString()] = nlohmann::json::parse(file.readAll().toStdString());
    }
    return files;
}

inline lapwright::metal::Metal metalFrom(const nlohmann::json& file)
{
    using lapwright::nearestFromMillimetres;
    lapwright::metal::Metal metal;
    metal.id = file.at("id").get<std::string>();
    metal.name = file.at("name").get<std::string>();
    for (const nlohmann::json& row : file.at("sheets"))
        metal.sheets.push_back({row.at("gauge").get<std::string>(),
                                nearestFromMillimetres(row.at("thickness_mm").get<double>()),
                                row.at("kilograms_per_square_metre").get<double>(),
                                nearestFromMillimetres(row.at("thickness_tolerance_mm").get<double>())});
    metal.elasticModulusPascals = file.at("elastic_modulus_pa").get<double>();
    metal.yieldStrengthPascals = file.at("yield_strength_pa").get<double>();
    metal.tensileStrengthPascals = file.at("tensile_strength_pa").get<double>();
    metal.expansionPerKelvin = file.at("expansion_per_kelvin").get<double>();
    return metal;
}

inline std::map<std::string, lapwright::metal::Metal> metals()
{
    std::map<std::string, lapwright::metal::Metal> result;
    for (const auto& [id, file] : all())
        result[id] = metalFrom(file);
    return result;
}

} // namespace metal_files
