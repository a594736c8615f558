#include "viewer/stage/things/edge_marks.h"

#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::MarkRule;

namespace {

std::string label_of(MarkRule rule, bool chosen, const std::string& gap) {
  switch (rule) {
    case MarkRule::tape:
      return words(chosen ? Words::tr("Edge mark, tape rule: %1 under the edge")
                          : Words::tr("tape rule: %1 under the edge"),
                   {gap});
    case MarkRule::drop:
      return words(chosen ? Words::tr("Edge mark, drop rule: %1 under the edge")
                          : Words::tr("drop rule: %1 under the edge"),
                   {gap});
    case MarkRule::nearest:
      return words(chosen ? Words::tr("Edge mark, nearest rule: %1 under the edge")
                          : Words::tr("nearest rule: %1 under the edge"),
                   {gap});
  }
  return "";
}

}  // namespace

void EdgeMarkBars::show(const geometry::Head& head, const geometry::Case& entered,
                        const geometry::Placement& placement, const Shown& shown) {
  shown_ = shown.has(Thing::edge_marks);
  placement_ = placement;
  marks_.clear();
  bars_.clear();
  if (!shown_) return;
  marks_.push_back(make_mark(head, Thing::edge_marks, "pulse", Shape::disc, palette::pulse, placement.pulse,
                             placement.front));
  const Eigen::Vector3d along_edge = placement.normal.cross(placement.front);
  for (const MarkRule rule : {MarkRule::drop, MarkRule::nearest, MarkRule::tape}) {
    const auto& at = placement.edge_mark.by(rule);
    if (!at) continue;
    const bool chosen = rule == entered.coil.laid_by;
    const double gap = (*at - placement.edge).norm();
    marks_.push_back(make_mark(head, Thing::edge_marks, std::string("edge mark ") + key_of(rule), Shape::bar,
                               chosen ? palette::edge_mark : paler(palette::edge_mark, 0.45), *at,
                               along_edge));
    bars_.push_back({rule, label_of(rule, chosen, in_mm(gap)), chosen});
  }
}

void EdgeMarkBars::draw(const geometry::Head& head, const Sight& sight) {
  ink_.begin(sight);
  for (auto& m : marks_) m.visible = in_sight(head.skin(), m.at, m.normal, sight);
  if (shown_) {
    for (size_t i = 0; i < bars_.size(); ++i) {
      const Mark& m = marks_[i + 1];
      if (bars_[i].chosen)
        ink_.line({placement_.edge, m.at}, 1.6, palette::edge_mark, 0.5);
      else
        ink_.dashes(placement_.edge, m.at, 1.2, paler(palette::edge_mark, 0.6), 0.5);
    }
    ink_.line(placement_.tape_line, 1.6, paler(palette::edge_mark, 0.8), 1.6);
    // Faint bars first, then the chosen one, then the pulse point.
    for (const bool chosen : {false, true})
      for (size_t i = 0; i < bars_.size(); ++i)
        if (bars_[i].chosen == chosen && marks_[i + 1].visible) ink_.mark(marks_[i + 1]);
    if (!marks_.empty() && marks_.front().visible) ink_.mark(marks_.front());
  }
  ink_.done();
}

void EdgeMarkBars::wish(std::vector<LabelWish>& labels, const Sight& sight) const {
  for (size_t i = 0; i < bars_.size(); ++i) {
    const Mark& m = marks_[i + 1];
    if (!m.visible) continue;
    LabelWish wish;
    wish.text = bars_[i].text;
    wish.anchor = sight.project(m.at);
    wish.clear_px = 7 * sight.scale;
    wish.may_go_far = true;
    wish.priority = bars_[i].chosen ? 98 : 70;
    wish.bold = bars_[i].chosen;
    if (!bars_[i].chosen) wish.colour = palette::quiet_text;
    labels.push_back(wish);
  }
}

}  // namespace scalpmark::viewer
