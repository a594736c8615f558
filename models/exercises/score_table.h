#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "geometry/exercise/score.h"

namespace scalpmark::models {

/// One trainee's scores, an attempt each.
struct TraineeScores {
  std::string file;  ///< name of the result's file, without its folder
  std::string by;    ///< initials; may be empty
  std::vector<geometry::Score> attempts;
};

/// Scores as a table (RFC 4180, decimal point): one line a step of each attempt, and one for the pulse at the
/// end ("pulse"). Columns: file, initials, attempt (from 1), step (key_of), done (yes or no), own_mm,
/// own_forward_mm, own_outward_mm, own_deg, off_mm, off_forward_mm, off_outward_mm, off_deg, carried_mm,
/// misread_mm. To 0.1 mm and 0.1 degrees; empty where there is nothing to say. File and initials are written
/// so that no spreadsheet takes them for a formula (csv_text()).
[[nodiscard]] std::string score_csv(const std::vector<TraineeScores>& trainees);
/// Whole or not at all.
void write_score_csv(const std::filesystem::path& file, const std::vector<TraineeScores>& trainees);

}  // namespace scalpmark::models
