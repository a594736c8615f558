// The head itself: matte and calm.
#include "viewer/stage/things/things.h"

namespace scalpmark::viewer {

ShowThing show_skin;

Part show_skin(const Showing& now, Surroundings& /*around*/) {
  Part part;
  part.thing = Thing::skin;
  if (now.shown.has(Thing::skin))
    part.body = Body{now.head.skin(), Role::skin, 0.46, 0.56, now.shown.skin_opacity};
  return part;
}

}  // namespace scalpmark::viewer
