#include "viewer/stage/scene/thing.h"

#include <array>
#include <utility>

namespace scalpmark::viewer {

namespace {

constexpr std::array<std::pair<Thing, std::string_view>, 26> thing_names_known{
    {{Thing::skin, "skin"},           {Thing::landmarks, "landmarks"},
     {Thing::tapes, "tapes"},         {Thing::grid, "grid"},
     {Thing::start, "start"},         {Thing::hotspot, "hotspot"},
     {Thing::treatment, "treatment"}, {Thing::alternatives, "alternatives"},
     {Thing::tolerance, "tolerance"}, {Thing::coil, "coil"},
     {Thing::angle, "angle"},         {Thing::edge_marks, "edge-marks"},
     {Thing::wanted, "wanted"},       {Thing::labels, "labels"},
     {Thing::legend, "legend"},       {Thing::numbers, "numbers"},
     {Thing::title, "title"},         {Thing::cortex, "cortex"},
     {Thing::gaps, "gaps"},           {Thing::way_marks, "way-marks"},
     {Thing::sight, "sight"},         {Thing::cap, "cap"},
     {Thing::places, "places"},       {Thing::field, "field"},
     {Thing::answers, "answers"},     {Thing::course, "course"}}};

}  // namespace

std::string_view name_of(Thing thing) {
  for (const auto& [t, name] : thing_names_known)
    if (t == thing) return name;
  return "";
}

std::optional<Thing> thing_named(std::string_view name) {
  for (const auto& [thing, n] : thing_names_known)
    if (n == name) return thing;
  return {};
}

const std::vector<Thing>& all_things() {
  static const std::vector<Thing> all = [] {
    std::vector<Thing> things;
    things.reserve(thing_names_known.size());
    for (const auto& [thing, name] : thing_names_known) things.push_back(thing);
    return things;
  }();
  return all;
}

}  // namespace scalpmark::viewer
