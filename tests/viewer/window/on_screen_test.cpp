#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

struct Screen {
  std::string name;
  std::function<void(MainWindow&)> go_there;
};

std::vector<Screen> screens() {
  const auto step = [](Worksheet::StepIndex index) {
    return [index](MainWindow& w) {
      w.set_mode(Mode::worksheet);
      w.worksheet().go_to(index);
    };
  };
  return {{"measure", step(Worksheet::measure_index)},
          {"landmarks", step(Worksheet::landmarks_index)},
          {"10-5 landmarks", [](MainWindow& w) { w.worksheet().landmarks()->systems()->button(2)->click(); }},
          {"search", step(Worksheet::search_index)},
          {"site", step(Worksheet::site_index)},
          {"check", step(Worksheet::check_index)},
          {"pulses",
           [](MainWindow& w) {
             w.set_mode(Mode::worksheet);
             w.worksheet().go_to(Worksheet::pulses_index);
             for (const geometry::SeenAnswer answer :
                  {geometry::SeenAnswer::thumb, geometry::SeenAnswer::none, geometry::SeenAnswer::index}) {
               REQUIRE(w.log().log(answer).isEmpty());
               w.log().step_spot(1);
             }
           }},
          {"check with marks", [](MainWindow& w) { mark_today(w, 15); }},
          {"check mode", [](MainWindow& w) { w.set_mode(Mode::check); }},
          {"save", step(Worksheet::save_index)},
          {"explain", [](MainWindow& w) { w.set_mode(Mode::explain); }}};
}

// Pixels of about this colour around a place in the picture.
int pixels_of(const QImage& picture, const viewer::Colour& colour, const viewer::Pixel& at, double reach) {
  constexpr int near_enough = 70;  // the coil over a mark tints it
  int count = 0;
  for (int y = static_cast<int>(at.y - reach); y <= at.y + reach; ++y)
    for (int x = static_cast<int>(at.x - reach); x <= at.x + reach; ++x) {
      if (!picture.rect().contains(x, y)) continue;
      const QColor pixel(picture.pixel(x, y));
      if (std::abs(pixel.red() - colour.red) < near_enough &&
          std::abs(pixel.green() - colour.green) < near_enough &&
          std::abs(pixel.blue() - colour.blue) < near_enough)
        ++count;
    }
  return count;
}

}  // namespace

TEST_CASE("on every screen the labels keep clear of each other, and what is marked can be seen") {
  const viewer::View views[]{viewer::View::front, viewer::View::left,       viewer::View::right,
                             viewer::View::above, viewer::View::front_left, viewer::View::square_on};
  for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
    OpenedWindow opened;
    MainWindow& w = opened.window;
    w.resize(size);
    QTest::qWait(50);
    for (const Screen& screen : screens()) {
      screen.go_there(w);
      QTest::qWait(50);
      for (const viewer::View view : views) {
        INFO(screen.name << ", " << size.width() << " wide, view " << static_cast<int>(view));
        w.stage().look(view);
        const QImage picture = w.stage().picture();
        const viewer::Stage& stage = w.stage().stage();
        struct Text {
          std::string text;
          viewer::Box box;
        };
        std::vector<Text> texts;
        for (const auto& label : stage.labels()) texts.push_back({label.wish.text, label.box});
        for (const auto& caption : stage.captions()) texts.push_back({caption.text, caption.box});
        const viewer::Box all{0, 0, static_cast<double>(picture.width()),
                              static_cast<double>(picture.height())};
        for (std::size_t i = 0; i < texts.size(); ++i) {
          INFO(texts[i].text);
          CHECK(texts[i].box.inside(all));
          for (std::size_t j = 0; j < i; ++j) {
            INFO("over " << texts[j].text);
            CHECK_FALSE(texts[i].box.overlaps(texts[j].box));
          }
        }
        // The chief marks where neither the head nor a mark of a higher layer hides them (the pulse point
        // lies on the start when the coil does): some of their own colour is there.
        const std::vector<viewer::SeenMark> marks = stage.marks();
        const auto covered = [&](const viewer::SeenMark& mark) {
          return std::any_of(marks.begin(), marks.end(), [&](const viewer::SeenMark& other) {
            return other.visible && other.layer() > mark.layer() && (other.at - mark.at).norm() < 2;
          });
        };
        for (const viewer::SeenMark& mark : marks) {
          if (!mark.visible || mark.thing == viewer::Thing::landmarks || mark.thing == viewer::Thing::grid ||
              mark.shape == viewer::Shape::small_hollow_disc)  // half under the disc of its pulse
            continue;
          if (covered(mark)) continue;
          if (mark.normal.dot(stage.sight().toward_eye) < 0.25) continue;  // too much from the side
          INFO(mark.name);
          const int seen =
              pixels_of(picture, mark.colour, stage.project(mark.at), viewer::reach_px(mark.shape));
          if (seen <= 4) picture.save(QStringLiteral(SCALPMARK_BINARY_DIR "/mark-not-seen.png"));
          CHECK(seen > 4);
        }
      }
    }
    w.set_mode(Mode::worksheet);
  }
}

TEST_CASE("the patient's left and right stand beside the head, not on it") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::measure_index);
  QTest::qWait(50);
  for (const viewer::View view : {viewer::View::front, viewer::View::back, viewer::View::above,
                                  viewer::View::left, viewer::View::square_on}) {
    w.stage().look(view);
    (void)w.stage().picture();
    const viewer::Stage& stage = w.stage().stage();
    for (const auto& caption : stage.captions()) {
      if (caption.text != "Patient's left" && caption.text != "Patient's right") continue;
      INFO(caption.text << ", view " << static_cast<int>(view));
      int on_head = 0;
      for (double x = caption.box.left; x <= caption.box.right; x += 2)
        for (double y = caption.box.top; y <= caption.box.bottom; y += 2)
          on_head += stage.skin_at({x, y}).has_value();
      CHECK(on_head == 0);
    }
  }
}

// Run on a dense screen as well (tests/window.cmake): what is drawn must have the size it was laid out for.
TEST_CASE("text is drawn as large as the place it was given, however dense the screen") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  w.stage().look(viewer::View::right);
  const QImage picture = w.stage().picture();
  const viewer::Stage& stage = w.stage().stage();
  CHECK(stage.sight().width_px == std::lround(w.stage().width() * w.stage().devicePixelRatioF()));
  REQUIRE(picture.width() == stage.sight().width_px);
  const double scale = stage.sight().scale;
  CHECK(scale >= w.stage().devicePixelRatioF());
  const auto dark_in = [&](const viewer::Box& box) {
    int count = 0;
    for (int y = static_cast<int>(box.top); y < box.bottom; ++y)
      for (int x = static_cast<int>(box.left); x < box.right; ++x)
        if (picture.rect().contains(x, y) && qGray(picture.pixel(x, y)) < 140) ++count;
    return count;
  };
  int looked_at = 0;
  for (const viewer::Caption& caption : stage.captions()) {
    if (!caption.is_legend && caption.text.rfind("Coil on", 0) != 0) continue;  // the column on the left
    INFO(caption.text);
    ++looked_at;
    const viewer::Box& box = caption.box;
    CHECK(dark_in(box) > 100);
    // The last of the text reaches the end of its place, and nothing goes beyond.
    CHECK(dark_in({box.right - 16 * scale, box.top, box.right + scale, box.bottom}) > 5);
    CHECK(dark_in({box.right + 2 * scale, box.top, box.right + 12 * scale, box.bottom}) == 0);
  }
  CHECK(looked_at == 2);
}

TEST_CASE("the legend is written on its ground, also after a bare head was on the stage") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  const auto dark_in_legend = [&] {
    QTest::qWait(50);
    w.stage().look(viewer::View::right);
    const QImage picture = w.stage().picture();
    int dark = 0;
    for (const viewer::Caption& caption : w.stage().stage().captions())
      if (caption.is_legend)
        for (int y = static_cast<int>(caption.box.top); y < caption.box.bottom; ++y)
          for (int x = static_cast<int>(caption.box.left); x < caption.box.right; ++x)
            if (picture.rect().contains(x, y) && qGray(picture.pixel(x, y)) < 140) ++dark;
    return dark;
  };
  const int before = dark_in_legend();
  CHECK(before > 300);
  const QString file = opened.folder.filePath("scan.ply");
  models::write_ply(file.toStdString(), w.session().head().head.skin());
  w.files().open_path(file);
  opened.settle();
  REQUIRE(w.session().unplaced());
  QTest::mouseMove(&w.stage(), w.stage().rect().center());
  QTest::qWait(100);
  w.session().place(Fiducial::nasion, w.session().head().head.fiducials().at.nasion);
  QTest::qWait(100);
  w.session().drop_unplaced();
  w.worksheet().go_to(Worksheet::site_index);
  CHECK(dark_in_legend() > 0.9 * before);
}
