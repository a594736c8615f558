#pragma once

#include <QWidget>

#include "viewer/window/session/recovery.h"
#include "viewer/window/session/unsaved_answer.h"

namespace scalpmark::window {

/// The boxes that stop the work for a question or a text to read. Each returns when it is closed.
[[nodiscard]] UnsavedAnswer ask_about_unsaved(QWidget* parent);
/// The same of what was put down in an exercise.
[[nodiscard]] UnsavedAnswer ask_about_unsaved_result(QWidget* parent);
/// What to do about a case that was changed on disk since it was read.
enum class ChangedAnswer { other_name, keep_both, cancel };
[[nodiscard]] ChangedAnswer ask_about_changed(QWidget* parent, const QString& file);
/// Whether to replace a file that is there and of another kind.
[[nodiscard]] bool ask_about_replacing(QWidget* parent, const QString& file);
/// Whether the face of the person who was scanned may go into a file.
[[nodiscard]] bool ask_about_face_in_export(QWidget* parent);
/// Whether to go on with what a crash left behind.
[[nodiscard]] bool ask_about_leftover(QWidget* parent, const Leftover& leftover);
/// The cautions, to be read before the first use.
void show_first_note(QWidget* parent);
void show_about(QWidget* parent);
void show_keys(QWidget* parent);

}  // namespace scalpmark::window
