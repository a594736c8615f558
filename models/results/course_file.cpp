#include "models/results/course_file.h"

#include <cmath>
#include <vector>

#include "geometry/base/message.h"
#include "models/files/csv.h"
#include "models/files/safe_file.h"

namespace scalpmark::models {

namespace g = geometry;

std::string course_csv(const g::Course& course, const g::Visits& visits) {
  std::string out = csv_row(
      {"date", "by", "pulse_off_mm", "forward_mm", "toward_midline_mm", "angle_off_deg", "outside_limits"});
  const auto tenths = [](double value) {
    return g::to_text(g::Number{std::round(value * 10) / 10 + 0.0, 1, true});
  };
  for (std::size_t i = 0; i < visits.size(); ++i) {
    std::vector<std::string> cells{iso(visits[i]->date), csv_text(visits[i]->by)};
    if (const auto& offset = course.offsets[i])
      for (const double value :
           {offset->pulse_off_mm, offset->forward_mm, offset->toward_midline_mm, offset->angle_off_deg})
        cells.push_back(tenths(value));
    else
      cells.insert(cells.end(), 4, "");
    cells.emplace_back(!course.offsets[i] ? "" : course.outside[i] ? "yes" : "no");
    out += csv_row(cells);
  }
  return out;
}

void write_course(const std::filesystem::path& file, const g::Course& course, const g::Visits& visits) {
  write_whole(file, course_csv(course, visits));
}

}  // namespace scalpmark::models
