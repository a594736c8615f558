#include "models/cases/visits_json.h"

#include <optional>
#include <string>
#include <utility>

#include "geometry/base/ranges.h"
#include "models/files/error.h"

namespace scalpmark::models {

namespace g = geometry;

namespace {

constexpr std::size_t longest_initials = 20, longest_remarks = 2000;  // characters

using MaybeLength = std::optional<double>;
constexpr std::array<std::pair<const char*, MaybeLength g::TapeReadings::*>, 4> tapes{
    {{"vertex", &g::TapeReadings::vertex_mm},
     {"nasion", &g::TapeReadings::nasion_mm},
     {"left_tragus", &g::TapeReadings::left_tragus_mm},
     {"right_tragus", &g::TapeReadings::right_tragus_mm}}};
constexpr std::array<std::pair<const char*, MaybeLength g::BrimHeights::*>, 4> brims{
    {{"nasion", &g::BrimHeights::nasion_mm},
     {"left_tragus", &g::BrimHeights::left_tragus_mm},
     {"right_tragus", &g::BrimHeights::right_tragus_mm},
     {"inion", &g::BrimHeights::inion_mm}}};

template <class Readings, class Names>
Readings read_lengths(const JsonGroup& visit, std::string_view key, const Names& names, const g::Range& range,
                      int fewest) {
  Readings readings;
  if (!visit.has(key)) return readings;
  std::vector<std::string_view> keys;
  for (const auto& name : names) keys.emplace_back(name.first);
  const JsonGroup group = visit.group(key, keys);
  for (const auto& [name, place] : names)
    if (group.has(name)) {
      double mm = 0;
      group.number(name, range, Message::of("mm"), mm);
      readings.*place = mm;
    }
  if (count_of(readings) < fewest)
    visit.refuse(key, Message::of("must have %1 or more lengths, but has %2", fewest, count_of(readings)));
  return readings;
}

template <class Readings, class Names>
nlohmann::ordered_json lengths_json(const Readings& readings, const Names& names) {
  auto out = nlohmann::ordered_json::object();
  for (const auto& [name, place] : names)
    if (readings.*place) out[name] = *(readings.*place);
  return out;
}

nlohmann::ordered_json pulse_json(const g::LoggedPulse& pulse) {
  nlohmann::ordered_json out;
  if (pulse.spot)
    out["spot"] = {pulse.spot->row, pulse.spot->column};
  else
    out["site"] = "treatment";
  out["output_percent"] = pulse.output_percent;
  out["answer"] = file_word(pulse.answer);
  if (pulse.corrected_from) out["corrected_from"] = file_word(*pulse.corrected_from);
  if (pulse.at) out["at"] = iso(*pulse.at);
  return out;
}

nlohmann::ordered_json visit_json(const g::Visit& visit) {
  nlohmann::ordered_json out;
  out["date"] = iso(visit.date);
  if (!visit.by.empty()) out["by"] = visit.by;
  if (!visit.pulses.empty()) {
    out["pulses"] = nlohmann::ordered_json::array();
    for (const g::LoggedPulse& pulse : visit.pulses) out["pulses"].push_back(pulse_json(pulse));
  }
  if (visit.threshold_percent) out["threshold_percent"] = *visit.threshold_percent;
  if (count_of(visit.site_tape) > 0) out["site_tape_mm"] = lengths_json(visit.site_tape, tapes);
  if (count_of(visit.edge_tape) > 0) out["edge_tape_mm"] = lengths_json(visit.edge_tape, tapes);
  if (count_of(visit.brim) > 0) out["brim_mm"] = lengths_json(visit.brim, brims);
  if (visit.marked_anew) out["marked_anew"] = true;
  if (!visit.remarks.empty()) out["remarks"] = visit.remarks;
  return out;
}

}  // namespace

g::LoggedPulse read_pulse(const JsonGroup& group) {
  g::LoggedPulse pulse;
  group.require({"output_percent", "answer"});
  if (group.has("spot") && group.has("site"))
    group.refuse("site", Message::of("must not be given together with spot; a pulse is at one of them"));
  if (!group.has("spot") && !group.has("site"))
    group.refuse("spot",
                 Message::of("must be given for a pulse on the grid, or site for one at the treatment site"));
  if (group.has("spot")) {
    std::array<int, 2> spot{};
    group.whole_pair("spot", g::ranges::spot, spot);
    pulse.spot = g::GridPosition{spot[0], spot[1]};
  } else {
    constexpr std::array<Choice<bool>, 1> sites{{{"treatment", true}}};
    bool there = false;
    group.choice("site", sites, there);
  }
  group.whole_number("output_percent", g::ranges::output_percent, pulse.output_percent);
  group.choice("answer", seen_answers, pulse.answer);
  if (group.has("corrected_from")) {
    g::SeenAnswer before = g::SeenAnswer::none;
    group.choice("corrected_from", seen_answers, before);
    pulse.corrected_from = before;
  }
  if (group.has("at")) {
    std::string text;
    group.text("at", text);
    pulse.at = g::time_from(text);
    if (!pulse.at)
      group.refuse("at", Message::of("must be a time of day such as 10:32:05, but is %1", group.shown("at")));
  }
  return pulse;
}

g::Visit read_visit(const JsonGroup& group) {
  g::Visit visit;
  group.require({"date"});
  std::string text;
  group.text("date", text);
  const auto date = g::date_from(text);
  if (!date)
    group.refuse("date", Message::of("must be a date such as 2026-11-26, but is %1", group.shown("date")));
  visit.date = *date;
  group.text("by", visit.by, longest_initials);
  if (group.has("pulses"))
    for (const JsonGroup& pulse : group.groups("pulses", pulse_keys)) {
      if (visit.pulses.size() == g::most_pulses)
        group.refuse("pulses", Message::of("has more than %1 pulses", g::most_pulses));
      visit.pulses.push_back(read_pulse(pulse));
    }
  if (group.has("threshold_percent")) {
    int percent = 0;
    group.whole_number("threshold_percent", g::ranges::output_percent, percent);
    visit.threshold_percent = percent;
  }
  visit.site_tape =
      read_lengths<g::TapeReadings>(group, "site_tape_mm", tapes, g::ranges::tape_reading_mm, 2);
  visit.edge_tape =
      read_lengths<g::TapeReadings>(group, "edge_tape_mm", tapes, g::ranges::tape_reading_mm, 2);
  visit.brim = read_lengths<g::BrimHeights>(group, "brim_mm", brims, g::ranges::brim_height_mm, 1);
  group.yes_or_no("marked_anew", visit.marked_anew);
  group.text("remarks", visit.remarks, longest_remarks);
  return visit;
}

std::string_view file_word(g::SeenAnswer answer) {
  for (const auto& choice : seen_answers)
    if (choice.value == answer) return choice.name;
  throw ModelError(Message::of("An answer to be written is none of the four; log the pulse again."));
}

g::Visits read_visits(const JsonGroup& top) {
  g::Visits visits;
  for (const JsonGroup& group : top.groups("visits", visit_keys)) {
    if (visits.size() == g::most_visits)
      top.refuse("visits", Message::of("has more than %1 visits", g::most_visits));
    visits.emplace_back(read_visit(group));
  }
  return visits;
}

nlohmann::ordered_json visits_json(const g::Visits& visits) {
  auto out = nlohmann::ordered_json::array();
  for (const auto& visit : visits) out.push_back(visit_json(*visit));
  return out;
}

}  // namespace scalpmark::models
