#include "viewer/sheet/visit_tables.h"

#include <algorithm>

#include "geometry/answers/visit_answers.h"
#include "viewer/words/answer_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr std::size_t visits_a_table = 30;

/// "8.3 / 11.3 / - / 22.6".
std::string tapes_in_short(const geometry::TapeReadings& readings) {
  if (count_of(readings) == 0) return "";
  std::string text;
  for (const auto& mm :
       {readings.vertex_mm, readings.nasion_mm, readings.left_tragus_mm, readings.right_tragus_mm})
    text += (text.empty() ? "" : " / ") + (mm ? tape_number(*mm) : "-");
  return text;
}

}  // namespace

SheetTable answers_table(const geometry::Case& the_case, const geometry::Plan& plan) {
  SheetTable table;
  const auto last = std::find_if(the_case.visits.rbegin(), the_case.visits.rend(),
                                 [](const auto& visit) { return !visit->pulses.empty(); });
  if (last == the_case.visits.rend()) return table;
  const auto number = static_cast<std::size_t>(the_case.visits.rend() - last);
  table.title = words(Words::tr("Pulses and answers, visit %1"), {std::to_string(number)});
  table.columns = {{"", 0.28}, {"", 0.72}};
  const auto answers = geometry::visit_answers(plan, the_case, **last);
  table.rows.push_back({words(Words::tr("Spot")), words(best_sentence(answers))});
  if (const auto centre = centre_sentence(answers); !centre.empty())
    table.rows.push_back({words(Words::tr("Centre")), words(centre)});
  if (answers.threshold) {
    const geometry::CountingRule rule = geometry::rule_of(the_case.answers);
    table.rows.push_back(
        {words(Words::tr("Threshold at the spot: %1"), {words(spot_name(answers.threshold->spot))}),
         words(counting_sentence(answers.threshold->counting, rule))});
    table.rows.push_back({"", words(estimate_sentence(*answers.threshold))});
  }
  table.rows.push_back(
      {words(Words::tr("Threshold written down")),
       (*last)->threshold_percent ? std::to_string(*(*last)->threshold_percent) + " %" : ""});
  table.note = words(eye_caution());
  return table;
}

std::vector<SheetTable> visits_tables(const geometry::Visits& visits) {
  std::vector<SheetTable> tables;
  for (std::size_t i = 0; i < visits.size(); ++i) {
    if (i % visits_a_table == 0) {
      SheetTable& table = tables.emplace_back();
      table.title = words(Words::tr("Visits"));
      table.columns = {{words(Words::tr("No.")), 0.05},
                       {words(Words::tr("Date")), 0.12},
                       {words(Words::tr("Initials")), 0.09},
                       {words(Words::tr("Threshold")), 0.11},
                       {words(Words::tr("Site mark, %1 from vertex / nasion / tragi"), {tape_unit()}), 0.24},
                       {words(Words::tr("Edge mark, the same")), 0.24},
                       {words(Words::tr("Remarks")), 0.15}};
    }
    const geometry::Visit& visit = *visits[i];
    std::string remarks = visit.marked_anew ? words(Words::tr("Marked anew.")) : "";
    if (!visit.remarks.empty()) remarks += (remarks.empty() ? "" : " ") + visit.remarks;
    tables.back().rows.push_back(
        {std::to_string(i + 1), iso(visit.date), visit.by,
         visit.threshold_percent ? std::to_string(*visit.threshold_percent) + " %" : "",
         tapes_in_short(visit.site_tape), tapes_in_short(visit.edge_tape), remarks});
  }
  return tables;
}

}  // namespace scalpmark::viewer
