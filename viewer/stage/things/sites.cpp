#include "viewer/stage/things/sites.h"

#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

void Sites::show(const geometry::Head& head, const geometry::Case& entered, const geometry::Plan& plan,
                 const Shown& shown) {
  marks_.clear();
  texts_.clear();
  const auto add = [&](Thing thing, const std::string& name, Shape shape, Colour colour,
                       const Eigen::Vector3d& at, const Eigen::Vector3d& along, const std::string& text) {
    marks_.push_back(make_mark(head, thing, name, shape, colour, at, along));
    texts_.push_back(text);
  };
  if (shown.has(Thing::alternatives))
    for (const auto& a : plan.treatment_alternatives) {
      const bool forward = a.rule == geometry::TreatmentRule::forward;
      // The one that was chosen carries the big diamond already.
      if (a.tape_from_treatment_mm < 0.5) continue;
      const std::string name = forward ? words(Words::tr("%1 forward"), {in_cm(a.distance_mm)}) : a.label;
      add(Thing::alternatives, name, Shape::small_diamond, paler(palette::treatment, 0.6), a.pulse,
          plan.axes.front, words(Words::tr("%1: %2 from the site"), {name, in_cm(a.tape_from_treatment_mm)}));
    }
  if (shown.has(Thing::treatment)) {
    const bool forward = entered.treatment.rule == geometry::TreatmentRule::forward;
    add(Thing::treatment, "treatment", Shape::diamond, palette::treatment, plan.treatment.pulse,
        plan.treatment.forward,
        forward ? words(Words::tr("Treatment site, %1 forward of the hotspot"),
                        {in_cm(entered.treatment.distance_mm)})
                : words(Words::tr("Treatment site, at %1"), {entered.treatment.label}));
  }
  if (shown.has(Thing::hotspot))
    add(Thing::hotspot, "hotspot", Shape::ring, palette::hotspot, plan.hotspot.pulse, plan.hotspot.forward,
        words(Words::tr("Hotspot")));
  if (shown.has(Thing::start))
    add(Thing::start, "start", Shape::disc, palette::start, plan.start.pulse, plan.start.forward,
        words(Words::tr("Search start")));
}

void Sites::draw(const geometry::Head& head, const Sight& sight) {
  ink_.begin(sight);
  for (auto& m : marks_) {
    m.visible = in_sight(head.skin(), m.at, m.normal, sight);
    if (m.visible) ink_.mark(m);
  }
  ink_.done();
}

void Sites::wish(std::vector<LabelWish>& labels, const Sight& sight) const {
  for (size_t i = 0; i < marks_.size(); ++i) {
    const Mark& m = marks_[i];
    if (!m.visible) continue;
    LabelWish wish;
    wish.text = texts_[i];
    wish.anchor = sight.project(m.at);
    wish.clear_px = (reach_px(m.shape) + 2) * sight.scale;
    wish.may_go_far = true;
    wish.priority = m.thing == Thing::treatment ? 100
                    : m.thing == Thing::hotspot ? 99
                    : m.thing == Thing::start   ? 95
                                                : 60;
    wish.bold = m.thing == Thing::treatment || m.thing == Thing::hotspot;
    labels.push_back(wish);
  }
}

}  // namespace scalpmark::viewer
