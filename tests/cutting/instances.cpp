#include "cutting/instances.h"

#include <nlohmann/json.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace lapwright::cutting::instances {

namespace {

using Rows = std::vector<std::vector<std::string>>;

/// The rows of a table without its head; none where there is no such file.
Rows table(const std::string& path, char separator)
{
    Rows rows;
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);) {
        while (!line.empty() && (line.back() == '\r' || line.back() == ' '))
            line.pop_back();
        if (line.empty())
            continue;
        rows.emplace_back();
        std::istringstream cells(line);
        for (std::string cell; std::getline(cells, cell, separator);)
            rows.back().push_back(cell);
    }
    if (!rows.empty())
        rows.erase(rows.begin());
    return rows;
}

struct Item {
    std::int64_t width, height, count;
};
struct Bin {
    std::int64_t width, height;
    std::optional<std::int64_t> cost;
};
struct Instance {
    std::vector<Bin> bins;
    std::vector<Item> items;
};

Instance readTables(const std::string& stem)
{
    Instance result;
    for (const auto& row : table(stem + "_bins.csv", ','))
        result.bins.push_back(
            {std::stoll(row[1]), std::stoll(row[2]),
             row.size() > 3 ? std::optional(std::int64_t{std::stoll(row[3])}) : std::nullopt});
    for (const auto& row : table(stem + "_items.csv", ','))
        result.items.push_back({std::stoll(row[1]), std::stoll(row[2]), std::stoll(row.back())});
    return result;
}

Instance readObject(const std::string& path)
{
    Instance result;
    std::ifstream in(path);
    if (!in)
        return result;
    const auto object = nlohmann::json::parse(in);
    for (const auto& entry : object.at("Objects"))
        result.bins.push_back(
            {entry.at("Length").get<std::int64_t>(), entry.at("Height").get<std::int64_t>(), std::nullopt});
    for (const auto& entry : object.at("Items"))
        result.items.push_back({entry.at("Length").get<std::int64_t>(),
                                entry.at("Height").get<std::int64_t>(),
                                entry.at("Demand").get<std::int64_t>()});
    return result;
}

/// The first cut horizontal: strips lie along the width, their girth is the height. Vertical: the other way
/// about.
std::optional<Problem> problemOf(const Instance& instance, bool horizontal, PatternClass patterns)
{
    ProblemBuilder builder;
    ShopRules rules;
    rules.patterns = patterns;
    builder.rules(rules);
    const auto put = [horizontal](std::int64_t width, std::int64_t height) {
        const Length across = Length::millimetres(horizontal ? height : width);
        return std::pair(across, Length::millimetres(horizontal ? width : height));
    };
    for (std::size_t index = 0; index < instance.bins.size(); ++index) {
        const auto [width, length] = put(instance.bins[index].width, instance.bins[index].height);
        builder.stock({std::to_string(index), StockKind::Sheet, width, length, std::nullopt,
                       instance.bins[index].cost, std::nullopt});
    }
    for (std::size_t index = 0; index < instance.items.size(); ++index) {
        const auto [girth, length] = put(instance.items[index].width, instance.items[index].height);
        builder.blank({std::to_string(index), girth, length, instance.items[index].count, false, 0, 0});
    }
    auto built = builder.build();
    return built.ok() ? std::optional<Problem>(*built) : std::nullopt;
}

Length eighths(std::int64_t count)
{
    return Length::sixtyFourths(8 * count);
}

std::string batchFile(const std::string& sort, int pieces)
{
    return folder().value_or("") + "/trim-batches/" + sort + "_" + std::to_string(pieces) + ".in";
}

/// The blanks that end every file of a batch.
std::optional<Problem> withBlanks(ProblemBuilder builder, std::istream& in)
{
    std::int64_t types = 0;
    in >> types;
    for (std::int64_t type = 0; type < types; ++type) {
        std::int64_t girth = 0, along = 0, count = 0;
        in >> girth >> along >> count;
        builder.blank({std::to_string(type), eighths(girth), eighths(along), count, false, 0, 0});
    }
    auto built = builder.build();
    return built.ok() ? std::optional<Problem>(*built) : std::nullopt;
}

} // namespace

std::optional<std::string> folder()
{
    const char* given = std::getenv("LAPWRIGHT_CUTTING_DATA");
    if (given == nullptr || !std::filesystem::exists(std::string(given) + "/two_stage_reference.tsv"))
        return std::nullopt;
    return given;
}

std::vector<TwoStage> twoStages()
{
    std::vector<TwoStage> instances;
    for (const auto& row : table(folder().value_or("") + "/two_stage_reference.tsv", '\t'))
        for (const bool exact : {false, true})
            instances.push_back({row[0], row[1] == "H", exact ? PatternClass::Exact : PatternClass::NonExact,
                                 std::stoll(row[exact ? 6 : 2]), std::stoll(row[exact ? 7 : 3])});
    return instances;
}

std::optional<Problem> problemOf(const TwoStage& instance)
{
    const std::string path = folder().value_or("");
    const bool tables = std::filesystem::exists(path + "/atp/" + instance.name + "_items.csv");
    return problemOf(tables ? readTables(path + "/atp/" + instance.name)
                            : readObject(path + "/silva/" + instance.name + ".json"),
                     instance.horizontal, instance.patterns);
}

std::vector<SeveralSheets> severalSheets()
{
    std::vector<SeveralSheets> instances;
    for (const auto& row : table(folder().value_or("") + "/cintra/best_known_2nho.csv", ','))
        instances.push_back({row[0].substr(row[0].rfind('/') + 1), std::stoll(row[1]), std::stoll(row[2])});
    return instances;
}

std::optional<Problem> problemOf(const SeveralSheets& instance)
{
    return problemOf(readTables(folder().value_or("") + "/cintra/" + instance.name), true,
                     PatternClass::NonExact);
}

std::vector<TrimBatch> trimBatches()
{
    std::vector<TrimBatch> batches;
    for (const auto& row : table(folder().value_or("") + "/trim_reference.tsv", '\t'))
        batches.push_back({std::stoi(row[0].substr(row[0].find('_') + 1)),
                           row[1] == "2e" ? PatternClass::Exact : PatternClass::NonExact, std::stoll(row[2]),
                           std::stoll(row[3])});
    return batches;
}

std::optional<Problem> trimBatch(int pieces, PatternClass patterns, StockKind kind)
{
    std::ifstream in(batchFile("trim", pieces));
    std::int64_t width = 0, length = 0;
    if (!(in >> width >> length))
        return std::nullopt;
    ShopRules rules;
    rules.patterns = patterns;
    ProblemBuilder builder;
    builder.rules(rules);
    const bool coil = kind == StockKind::Coil;
    builder.stock({"stock", kind, eighths(width), coil ? Length::millimetres(1'000'000) : eighths(length),
                   std::nullopt, std::nullopt, coil ? std::optional(eighths(length)) : std::nullopt});
    return withBlanks(std::move(builder), in);
}

std::optional<Problem> trimBatchOfSeveralStocks(int pieces)
{
    std::ifstream in(batchFile("multi", pieces));
    std::int64_t stocks = 0;
    if (!(in >> stocks))
        return std::nullopt;
    ProblemBuilder builder;
    for (std::int64_t stock = 0; stock < stocks; ++stock) {
        std::int64_t width = 0, length = 0, cost = 0, available = 0;
        in >> width >> length >> cost >> available;
        builder.stock({std::to_string(stock), available < 0 ? StockKind::Sheet : StockKind::Remnant,
                       eighths(width), eighths(length), std::nullopt, cost, std::nullopt});
    }
    return withBlanks(std::move(builder), in);
}

} // namespace lapwright::cutting::instances
