/* What the window can be told to do, but for files (window_files.c). */
#include "window_private.h"

#include <glib/gi18n.h>

#include "base/dialogs.h"
#include "guide_window.h"
#include "keys_window.h"
#include "tour.h"

static const char *const unit_names[] = {
  [RW_UNITS_MM] = "mm",
  [RW_UNITS_INCH] = "inch",
  [RW_UNITS_FRACTION] = "fraction",
};

static void
undo (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  rw_document_undo (RW_WINDOW (user_data)->document);
}

static void
redo (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  rw_document_redo (RW_WINDOW (user_data)->document);
}

static void
find (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  RwWindow *self = user_data;

  g_action_group_change_action_state (G_ACTION_GROUP (self), "show-form", g_variant_new_boolean (TRUE));
  rw_form_focus_filter (RW_FORM (self->form));
}

static void
guide (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  RwWindow *self = user_data;

  if (self->guide == NULL)
    g_set_weak_pointer (&self->guide, rw_guide_window_new (GTK_WINDOW (self), self->document));
  gtk_window_present (GTK_WINDOW (self->guide));
}

void
rw_window_start_tour (RwWindow *self)
{
  const RwTourStop stops[] = {
    { self->sheets, GTK_POS_TOP, _("This is a complete build"),
      _("It plays by its numbers. Take hold of anything near the pointer and drag it: bridge, nut, rim. All that"
        " depends on it follows.") },
    { self->form, GTK_POS_RIGHT, _("Every value stands in the form"),
      _("Type millimetres, inches or fractions, and sums as well. Below, each value says what it measures.") },
    { self->foot, GTK_POS_TOP, _("What matters most is always in sight"),
      _("Action, where the bridge lands, the neck angle, and what does not fit.") },
    { self->drawer, GTK_POS_TOP, _("Findings, dimensions, steps"),
      _("What does not fit and what would help; every number for the bench, with room for what you measured; the"
        " steps of the making.") },
    { self->title, GTK_POS_BOTTOM, _("Papers for the bench"),
      _("The button Papers writes full-size sheets. The guide in the menu follows one build from first idea to"
        " strung instrument.") },
  };

  g_action_group_change_action_state (G_ACTION_GROUP (self), "show-form", g_variant_new_boolean (TRUE));
  g_action_group_change_action_state (G_ACTION_GROUP (self), "show-drawer", g_variant_new_boolean (TRUE));
  rw_tour_start (GTK_WIDGET (self), stops, G_N_ELEMENTS (stops));
}

static void
tour (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  rw_window_start_tour (RW_WINDOW (user_data));
}

static void
keys (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  RwWindow *self = user_data;

  if (self->keys == NULL)
    g_set_weak_pointer (&self->keys, rw_keys_window_new (GTK_WINDOW (self)));
  gtk_window_present (GTK_WINDOW (self->keys));
}

static void
on_new_name (const char *text, gpointer user_data)
{
  if (text != NULL)
    rw_document_rename (RW_WINDOW (user_data)->document, text);
}

static void
rename_build (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  RwWindow *self = user_data;

  rw_dialog_text (GTK_WINDOW (self), _("Name of the build"), rw_document_project (self->document)->name,
                  on_new_name, self);
}

/* ---- actions with a state ---- */

static void
change_units (GSimpleAction *action, GVariant *value, gpointer user_data)
{
  const char *name = g_variant_get_string (value, NULL);

  for (guint i = 0; i < G_N_ELEMENTS (unit_names); i++)
    if (g_str_equal (unit_names[i], name))
      {
        rw_document_set_units (RW_WINDOW (user_data)->document, (RwUnits) i);
        g_simple_action_set_state (action, value);
      }
}

static void
change_form (GSimpleAction *action, GVariant *value, gpointer user_data)
{
  gtk_widget_set_visible (RW_WINDOW (user_data)->form, g_variant_get_boolean (value));
  g_simple_action_set_state (action, value);
}

static void
change_drawer (GSimpleAction *action, GVariant *value, gpointer user_data)
{
  gtk_widget_set_visible (RW_WINDOW (user_data)->drawer, g_variant_get_boolean (value));
  g_simple_action_set_state (action, value);
}

static void
change_beside (GSimpleAction *action, GVariant *value, gpointer user_data)
{
  rw_window_show_beside (RW_WINDOW (user_data), g_variant_get_boolean (value));
  g_simple_action_set_state (action, value);
}

static void
set_state (RwWindow *self, const char *name, GVariant *state)
{
  g_simple_action_set_state (G_SIMPLE_ACTION (g_action_map_lookup_action (G_ACTION_MAP (self), name)), state);
}

void
rw_window_add_actions (RwWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "undo", .activate = undo },
    { .name = "redo", .activate = redo },
    { .name = "find", .activate = find },
    { .name = "guide", .activate = guide },
    { .name = "tour", .activate = tour },
    { .name = "keys", .activate = keys },
    { .name = "rename", .activate = rename_build },
    { .name = "units", .parameter_type = "s", .state = "'mm'", .change_state = change_units },
    { .name = "show-form", .state = "true", .change_state = change_form },
    { .name = "show-drawer", .state = "true", .change_state = change_drawer },
    { .name = "show-beside", .state = "false", .change_state = change_beside },
  };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  set_state (self, "units", g_variant_new_string (unit_names[self->memory.units]));
  set_state (self, "show-form", g_variant_new_boolean (self->memory.form_shown));
  set_state (self, "show-drawer", g_variant_new_boolean (self->memory.drawer_shown));
}

static void
enable (RwWindow *self, const char *name, gboolean enabled)
{
  g_simple_action_set_enabled (G_SIMPLE_ACTION (g_action_map_lookup_action (G_ACTION_MAP (self), name)),
                               enabled);
}

void
rw_window_refresh_actions (RwWindow *self)
{
  enable (self, "undo", rw_document_undo_name (self->document) != NULL);
  enable (self, "redo", rw_document_redo_name (self->document) != NULL);
}
