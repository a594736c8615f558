#pragma once

#include <cstddef>
#include <memory>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "geometry/hands/tolerance.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"
#include "models/cases/case_file.h"
#include "models/heads/load_head.h"

namespace scalpmark::viewer {

/// A small table of the printed sheet, all text.
struct SheetTable {
  struct Column {
    std::string heading;  ///< empty in all columns: the table has no heading row
    double share = 1;     ///< of the table's width
    bool number = false;  ///< stands to the right
  };
  std::string title;
  std::vector<Column> columns;
  std::vector<std::vector<std::string>> rows;
  std::string note;                                      ///< a sentence below; may be empty
  std::set<std::pair<std::size_t, std::size_t>> bold{};  ///< cells, by row and column
};

/// Everything the printed sheet says, in the order in which it is said. Lengths in cm with one decimal, as on
/// a tape, but depths, which no tape measures, in mm; angles in whole degrees.
struct SheetContent {
  std::string label, date;
  std::string head;       ///< which head was used
  std::string head_note;  ///< what that means for trust in the numbers
  SheetTable find_again;  ///< what finds the treatment's two marks again, for the first page
  SheetTable measures, search, coil, treatment;
  SheetTable cortex;        ///< what lies under treatment site and hotspot; no rows for a head without
  SheetTable field;         ///< the induced field in a round model head; no rows where none is known
  SheetTable tapes;         ///< tape distances of pulse points and edge marks
  SheetTable to_draw;       ///< tapes to draw the search marks by; no rows where it makes no difference
  SheetTable rules;         ///< how far the other rules' marks lie
  SheetTable alternatives;  ///< other treatment sites and how far they are
  SheetTable answers;       ///< what pulses said of spot and threshold; no rows without any
  std::vector<SheetTable> visits;  ///< so far; none without
  std::vector<std::string> warnings, cautions;
  std::string not_this;  ///< what the sheet is not
};

/// The sheet of a solved case; `date` as it is to be printed.
[[nodiscard]] SheetContent sheet_content(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                                         const geometry::Plan& plan, const std::string& date,
                                         const std::shared_ptr<const geometry::Tolerance>& by_hand);

/// How far off hands could put the pulse, as the sheet says and draws it; nothing where that cannot be worked
/// out (no edge mark to lay a coil on: the plan's warnings say so). A tenth of a second or more.
[[nodiscard]] std::shared_ptr<const geometry::Tolerance> off_by_hand(const geometry::Head& head,
                                                                     const geometry::Case& the_case,
                                                                     const geometry::Plan& plan);

}  // namespace scalpmark::viewer
