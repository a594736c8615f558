#include "viewer/words/find_again.h"

#include <array>

#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::vector<TapeToRead> find_again(const geometry::Plan& plan) {
  using geometry::TapeFrom;
  const std::array<std::pair<QString, double TapeFrom::*>, 4> from{
      {{Words::tr("the vertex"), &TapeFrom::vertex_mm},
       {Words::tr("the nasion"), &TapeFrom::nasion_mm},
       {Words::tr("the left tragus"), &TapeFrom::left_tragus_mm},
       {Words::tr("the right tragus"), &TapeFrom::right_tragus_mm}}};
  std::vector<TapeToRead> all;
  const auto add = [&](const QString& mark, const std::optional<TapeFrom>& tapes) {
    if (!tapes) return;
    for (const auto& [name, length] : from) all.push_back({words(mark), words(name), (*tapes).*length});
  };
  add(Words::tr("Site mark"), plan.treatment.pulse_tape);
  if (plan.treatment.mark) add(Words::tr("Edge mark"), plan.treatment.edge_mark_tape);
  return all;
}

std::string tape_unit_in_words() {
  return length_unit() == LengthUnit::inch ? words(Words::tr("inches", "tape in inches from")) : tape_unit();
}

}  // namespace scalpmark::viewer
