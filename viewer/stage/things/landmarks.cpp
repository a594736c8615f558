#include "viewer/stage/things/landmarks.h"

#include <algorithm>

#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

bool is_fiducial(const std::string& name) {
  return name == "Nz" || name == "Iz";
}

bool is_ten_twenty(const std::string& name) {
  const auto& labels = geometry::landmark_labels(geometry::LandmarkSystem::ten_twenty);
  return std::find(labels.begin(), labels.end(), name) != labels.end();
}

std::string shown_name(const std::string& name) {
  if (name == "Nz") return words(Words::tr("nasion"));
  if (name == "Iz") return words(Words::tr("inion"));
  if (name == "Cz") return words(Words::tr("Cz (vertex)"));
  if (name == "left tragus") return words(Words::tr("left tragus"));
  if (name == "right tragus") return words(Words::tr("right tragus"));
  return name;
}

}  // namespace

void Landmarks::show(const geometry::Head& head, const geometry::Plan& plan, const Shown& shown) {
  shown_ = shown.has(Thing::landmarks);
  // An edit of the case leaves landmarks where they are: lay them anew only when they moved.
  std::vector<std::pair<std::string, Eigen::Vector3d>> wanted;
  for (const auto& l : plan.landmarks) wanted.emplace_back(l.name, l.at);
  wanted.emplace_back("left tragus", plan.fiducials.left_tragus);
  wanted.emplace_back("right tragus", plan.fiducials.right_tragus);
  const void* skin = &head.skin().vertices();
  if (skin == skin_ && wanted.size() == marks_.size() &&
      std::equal(wanted.begin(), wanted.end(), marks_.begin(),
                 [](const auto& w, const Mark& m) { return w.first == m.name && w.second == m.at; }))
    return;
  skin_ = skin;
  marks_.clear();
  for (const auto& [name, at] : wanted)
    marks_.push_back(
        make_mark(head, Thing::landmarks, name, Shape::dot, palette::landmark, at, plan.axes.front));
}

void Landmarks::draw(const geometry::Head& head, const Sight& sight) {
  ink_.begin(sight);
  for (auto& m : marks_) {
    m.visible = shown_ && in_sight(head.skin(), m.at, m.normal, sight);
    if (m.visible) ink_.mark(m);
  }
  ink_.done();
}

void Landmarks::wish(std::vector<LabelWish>& labels, const Sight& sight) const {
  for (const auto& m : marks_) {
    if (!m.visible) continue;
    LabelWish wish;
    wish.text = shown_name(m.name);
    wish.anchor = sight.project(m.at);
    wish.clear_px = (reach_px(m.shape) + 1.5) * sight.scale;
    const bool tragus = m.name.find("tragus") != std::string::npos;
    wish.priority = is_fiducial(m.name) || tragus || m.name == "Cz" ? 50 : is_ten_twenty(m.name) ? 30 : 10;
    wish.may_go_far = wish.priority == 50;
    labels.push_back(wish);
  }
}

}  // namespace scalpmark::viewer
