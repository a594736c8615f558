#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/plan/case.h"

namespace scalpmark::geometry {

/// What a trainee is asked for, in the order of the trade.
enum class Task {
  four_points,          ///< nasion, inion and both tragi, felt for and marked
  three_tapes,          ///< nasion-inion, tragus-tragus, circumference: pulled, read, and the reading typed
  vertex,               ///< half way along both long tapes, marked
  start,                ///< of the search, measured from the vertex and marked
  grid,                 ///< its nine marks
  hotspot,              ///< told which spot answered: where that pulse went
  site,                 ///< of the treatment
  edge_mark,            ///< for it, by the rule the case draws by
  coil,                 ///< laid on one's own two marks
  coil_on_given_marks,  ///< laid on two marks that someone else has drawn
  find_again,           ///< the cap was changed: a lost mark, from its four written tape distances
};
inline constexpr std::array all_tasks{
    Task::four_points, Task::three_tapes, Task::vertex,    Task::start, Task::grid,
    Task::hotspot,     Task::site,        Task::edge_mark, Task::coil,  Task::coil_on_given_marks,
    Task::find_again};

/// One thing to do of a task. `which`: of the four points nasion, inion, left and right tragus; of the tapes
/// as TapeKind has them; of the grid row by row, back to front, midline to outside (0 is row -1, column -1);
/// of others 0.
struct Step {
  Task task = Task::four_points;
  int which = 0;

  friend auto operator<=>(const Step&, const Step&) = default;
};

/// 4, 3, 9 or 1.
[[nodiscard]] int steps_in(Task task);
/// All of a task, in the order in which they are done: of the grid the middle first, from which the others
/// are measured.
[[nodiscard]] std::vector<Step> steps_of(Task task);
/// The spot of the grid that a step is, and the other way.
[[nodiscard]] GridPosition spot_of(const Step& step);
[[nodiscard]] Step step_of(const GridPosition& spot);

/// Whether what is done in a task goes on to the pulse of one's own coil: all but the tapes, the coil on
/// given marks and the mark found again.
[[nodiscard]] bool leads_to_pulse(Task task);

/// What a step asks for.
enum class Asks { mark, reading, coil };
[[nodiscard]] Asks asked_in(Task task);

/// Names in files: "four_points" ...; "nasion", "nasion_inion", "spot_1_-1" (row, column), "vertex" ... Empty
/// for a name that is none.
[[nodiscard]] std::string_view key_of(Task task);
[[nodiscard]] std::optional<Task> task_named(std::string_view key);
[[nodiscard]] std::string key_of(const Step& step);
[[nodiscard]] std::optional<Step> step_named(std::string_view key);

/// What is to be done, on which head. The case that goes with it (side, search, coil, the spot that answers,
/// treatment) is kept beside it.
struct Exercise {
  std::string title;
  std::vector<Task> tasks;  ///< each once, in the order of the trade
  /// On a head drawn for `number` (drawn_head.h); else on the case's own.
  bool drawn_head = true;
  /// The same number gives a whole class the same head, the same marks drawn by someone else, and the same
  /// mark to find again. 0 to `largest_number`.
  std::uint32_t number = 1;
  std::optional<int> minutes;  ///< for all of it; empty: no limit
  std::optional<int> tries;    ///< of the whole; empty: as many as one likes

  friend bool operator==(const Exercise&, const Exercise&) = default;
};
inline constexpr std::uint32_t largest_number = 999999;  ///< six digits, to be typed from a board
inline constexpr int most_minutes = 240, most_tries = 20;
inline constexpr std::size_t longest_title = 120;  ///< characters

/// All tasks, as a whole.
[[nodiscard]] Exercise whole_exercise();

[[nodiscard]] bool has_task(const Exercise& exercise, Task task);
/// All steps of its tasks, in order.
[[nodiscard]] std::vector<Step> steps_of(const Exercise& exercise);

/// Refuses (GeometryError): no task, a task twice or out of the trade's order, a number, minutes or tries out
/// of their range, too long a title.
void check_exercise(const Exercise& exercise);

/// What has to be on the head for a task, and is not asked for in the exercise: there it stands, as someone
/// else has drawn it, in its right place. For the hotspot the mark of the spot that answered alone.
[[nodiscard]] std::vector<Step> given_steps(const Exercise& exercise, const Case& the_case, Task task);

}  // namespace scalpmark::geometry
