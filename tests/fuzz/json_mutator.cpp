// Changes values inside a JSON document, so that most of what the fuzzer tries gets past the parser and the
// schema; bytes are changed as well, as they would be without it.
#include <nlohmann/json.hpp>

#include <array>
#include <cstdint>
#include <cstring>
#include <random>
#include <string>
#include <vector>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t largest);

namespace {

using Json = nlohmann::json;

void collect(Json& value, std::vector<Json*>& all)
{
    all.push_back(&value);
    if (value.is_structured())
        for (Json& inner : value)
            collect(inner, all);
}

Json extreme(std::mt19937& random)
{
    static const std::array<Json, 17> values{
        Json(0),       Json(-1),   Json(1e-9),   Json(1e9),          Json(1e18),          Json(-1e308),
        Json(nullptr), Json(true), Json(""),     Json("\u202e../x"), Json("12' 6 3/8\""), Json(Json::array()),
        Json(90),      Json(180),  Json(359.99), Json(INT64_MAX),    Json(Json::object())};
    return values.at(random() % values.size());
}

void mutate(Json& document, std::mt19937& random)
{
    std::vector<Json*> all;
    collect(document, all);
    Json& chosen = *all[random() % all.size()];
    switch (random() % 6) {
    case 0:
        chosen = extreme(random);
        break;
    case 1:
        if (chosen.is_number())
            chosen = chosen.get<double>() * std::array{-1.0, 0.5, 1.01, 2.0, 1000.0}.at(random() % 5);
        break;
    case 2:
        if (chosen.is_array() && !chosen.empty())
            chosen.push_back(chosen[random() % chosen.size()]);
        break;
    case 3:
        if (chosen.is_array() && !chosen.empty())
            chosen.erase(random() % chosen.size());
        break;
    case 4:
        if (chosen.is_object() && !chosen.empty())
            chosen.erase(std::next(chosen.begin(), static_cast<int>(random() % chosen.size())));
        break;
    default:
        chosen = Json(*all[random() % all.size()]);
    }
}

} // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t largest,
                                               unsigned seed)
{
    std::mt19937 random(seed);
    Json document =
        random() % 8 == 0 ? Json(Json::value_t::discarded) : Json::parse(data, data + size, nullptr, false);
    if (document.is_discarded())
        return LLVMFuzzerMutate(data, size, largest);
    for (unsigned left = 1 + random() % 3; left > 0; --left)
        mutate(document, random);
    const std::string text = document.dump(-1, ' ', false, Json::error_handler_t::replace);
    if (text.size() > largest)
        return LLVMFuzzerMutate(data, size, largest);
    std::memcpy(data, text.data(), text.size());
    return text.size();
}
