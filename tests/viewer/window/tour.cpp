#include "tests/viewer/window/tour.h"

#include <QDir>

#include "tests/viewer/window/hands_tour.h"
#include "tests/viewer/window/practise_tour.h"
#include "tests/viewer/window/tour_settings.h"

// Walks through every screen and saves each as a picture, so that people can look at all of them in one go.
// usage: window_tour [FOLDER [lesson|contact|brain|cap|visit|hands|chair|practise|every [SETTING]]]; with
// "lesson" the lesson's screens alone, with "contact" those of the gap under the coil and of how far off
// hands are, with "brain" those that show a brain under the skin, with "cap" those of the cap, with "visit"
// those of a visit and a course, with "hands" those of hands_tour.h, with "chair" those of tour_chair.h, with
// "practise" those of practise_tour.h, with "every" those of every_screen.h in three sizes and both themes,
// or in one SETTING of tour_settings.h. Says which label stands over another's symbol, and fails if one does.

using namespace scalpmark;
using namespace scalpmark::window;

int main(int argc, char** argv) {
  const QString folder = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("build/tour");
  const TestSession bench(argc, argv);
  if (argc > 2 && QLatin1String(argv[2]) == QLatin1String("every"))
    return tour_of_settings(folder, argc > 3 ? argv[3] : "") ? 0 : 1;
  if (argc > 2 && QLatin1String(argv[2]) == QLatin1String("hands")) {
    QDir().mkpath(folder);
    tour_of_hands(folder);
    return 0;
  }
  if (argc > 2 && QLatin1String(argv[2]) == QLatin1String("practise")) {
    QDir().mkpath(folder);
    tour_of_practise(folder, argc > 3 ? argv[3] : "");
    return 0;
  }
  for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
    Tour tour(folder, size);
    const QString alone = argc > 2 ? QString::fromLocal8Bit(argv[2]) : QString();
    if (alone == QLatin1String("lesson")) {
      tour.lesson();
      continue;
    }
    if (alone == QLatin1String("contact")) {
      tour.looked_into();
      continue;
    }
    if (alone == QLatin1String("cap")) {
      tour.cap();
      if (size.width() == 1280) Tour(folder, QSize(960, 620)).cap();
      continue;
    }
    if (alone == QLatin1String("field")) {
      tour.field();
      if (size.width() == 1280) Tour(folder, QSize(960, 620)).field();
      continue;
    }
    if (alone == QLatin1String("visit")) {
      tour.visits();
      if (size.width() == 1280) Tour(folder, QSize(960, 620)).visits();
      continue;
    }
    if (alone == QLatin1String("chair")) {
      tour.chair();
      if (size.width() == 1280) Tour(folder, QSize(960, 620)).chair();
      continue;
    }
    if (alone == QLatin1String("brain")) {
      tour.brain();
      continue;
    }
    tour.run();
    tour.chair();
    if (size.width() == 1280) tour.run_mri();
  }
  tour_of_practise(folder);
  return mistaken_so_far() == 0 ? 0 : 1;
}
