#include "models/exercises/score_table.h"

#include <cmath>
#include <optional>

#include "geometry/base/message.h"
#include "models/files/csv.h"
#include "models/files/safe_file.h"

namespace scalpmark::models {

namespace g = geometry;

namespace {

std::string in_tenths(const std::optional<double>& value) {
  if (!value) return "";
  return g::to_text(g::Number{std::round(*value * 10) / 10 + 0.0, 1, true});
}

void add_offset(std::vector<std::string>& cells, const g::Offset& offset, bool two_ways) {
  cells.push_back(in_tenths(offset.mm));
  cells.push_back(two_ways ? in_tenths(offset.forward_mm) : "");
  cells.push_back(two_ways ? in_tenths(offset.outward_mm) : "");
  cells.push_back(in_tenths(offset.angle_deg));
}

void add_row(std::string& out, std::vector<std::string> cells, const g::StepScore& step) {
  cells.push_back(key_of(step.step));
  cells.emplace_back(step.placed ? "yes" : "no");
  if (step.placed) {
    const bool two_ways = !step.placed->reading_mm;
    add_offset(cells, step.own, two_ways);
    add_offset(cells, step.off, two_ways);
    cells.push_back(in_tenths(step.carried.mm));
    cells.push_back(in_tenths(step.misread_mm));
  } else {
    cells.insert(cells.end(), 10, "");
  }
  out += csv_row(cells);
}

void add_row(std::string& out, std::vector<std::string> cells, const g::PulseScore& pulse) {
  cells.insert(cells.end(), {"pulse", pulse.laid ? "yes" : "no", "", "", "", ""});
  add_offset(cells, pulse.off, true);
  cells.insert(cells.end(), 2, "");
  out += csv_row(cells);
}

}  // namespace

std::string score_csv(const std::vector<TraineeScores>& trainees) {
  std::string out = csv_row({"file", "initials", "attempt", "step", "done", "own_mm", "own_forward_mm",
                             "own_outward_mm", "own_deg", "off_mm", "off_forward_mm", "off_outward_mm",
                             "off_deg", "carried_mm", "misread_mm"});
  for (const TraineeScores& trainee : trainees)
    for (std::size_t i = 0; i < trainee.attempts.size(); ++i) {
      const std::vector<std::string> first{csv_text(trainee.file), csv_text(trainee.by),
                                           std::to_string(i + 1)};
      for (const g::StepScore& step : trainee.attempts[i].steps) add_row(out, first, step);
      if (trainee.attempts[i].pulse) add_row(out, first, *trainee.attempts[i].pulse);
    }
  return out;
}

void write_score_csv(const std::filesystem::path& file, const std::vector<TraineeScores>& trainees) {
  write_whole(file, score_csv(trainees));
}

}  // namespace scalpmark::models
