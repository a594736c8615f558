#include "viewer/window/frame/through_skin.h"

#include <algorithm>
#include <utility>

namespace scalpmark::window {

using viewer::Thing;

ThroughSkin::ThroughSkin(Session& session) : session_(session) {
  connect(&session_, &Session::head_changed, this, [this] {
    if ((for_patient_ || opacity_ < 1) && no_brain_.isEmpty()) session_.want_cortex();
  });
  connect(&session_, &Session::no_cortex, this, [this](const QString& sentence) {
    no_brain_ = sentence;
    say_no_brain();
  });
}

void ThroughSkin::want_brain() {
  no_brain_.clear();  // it may have been installed since
  session_.want_cortex();
}

void ThroughSkin::say_no_brain() {
  if (!for_patient_ && !no_brain_.isEmpty()) emit no_brain(no_brain_);
}

void ThroughSkin::set_opacity(double opacity) {
  const double before = std::exchange(opacity_, opacity);
  if (opacity < 1 && before == 1) want_brain();
  emit changed();
}

void ThroughSkin::set_for_patient(bool on) {
  if (on == std::exchange(for_patient_, on)) return;
  if (on)
    want_brain();
  else
    say_no_brain();
}

void ThroughSkin::add_to(viewer::Shown& shown) const {
  shown.skin_opacity = std::min(shown.skin_opacity, opacity_);
  if (!session_.has_cortex() || opacity_ == 1) return;
  shown.things.insert(Thing::cortex);
  if (!shown.has(Thing::coil)) shown.under_coil = viewer::UnderCoil::left_out;
}

}  // namespace scalpmark::window
