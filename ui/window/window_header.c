/* The header: undo and redo, the build's name and whether it is saved, units, papers, menu. */
#include "window_private.h"

#include <glib/gi18n.h>

#include "base/access.h"

static GtkWidget *
icon_button (const char *icon, const char *name, const char *action)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  rw_access_title (button, name);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  return button;
}

static GtkWidget *
text_button (const char *text, const char *tooltip, const char *action)
{
  GtkWidget *button = gtk_button_new_with_label (text);

  gtk_widget_set_tooltip_text (button, tooltip);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  return button;
}

static GtkWidget *
title_widget (RwWindow *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  gtk_widget_set_valign (box, GTK_ALIGN_CENTER);
  self->title = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->title, "title");
  gtk_label_set_ellipsize (GTK_LABEL (self->title), PANGO_ELLIPSIZE_END);
  self->saved = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->saved, "subtitle");
  gtk_box_append (GTK_BOX (box), self->title);
  gtk_box_append (GTK_BOX (box), self->saved);
  return box;
}

static GtkWidget *
units_buttons (void)
{
  static const struct
  {
    const char *label, *name, *target;
  } units[] = {
    { "mm", N_("Millimetres"), "mm" },
    { "in", N_("Decimal inches"), "inch" },
    { "1⁄64", N_("Inches and 64ths"), "fraction" },
  };
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);

  gtk_widget_add_css_class (box, "linked");
  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    {
      GtkWidget *button = gtk_toggle_button_new_with_label (units[i].label);

      rw_access_title (button, _(units[i].name));
      gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "win.units");
      gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "s", units[i].target);
      gtk_box_append (GTK_BOX (box), button);
    }
  return box;
}

/* The menu is made when it is first opened, not at the start. */
static void
create_menu (GtkMenuButton *button, gpointer user_data)
{
  RwWindow *self = user_data;
  g_autoptr (GtkBuilder) builder = NULL;

  if (self->recent == NULL)
    {
      builder = gtk_builder_new_from_resource ("/org/rimwright/Rimwright/menus.ui");
      self->recent = g_object_ref (G_MENU (gtk_builder_get_object (builder, "recent")));
      gtk_menu_button_set_menu_model (button, G_MENU_MODEL (gtk_builder_get_object (builder, "main")));
    }
  rw_window_fill_recent (self);
}

static GtkWidget *
menu_button (RwWindow *self)
{
  GtkWidget *button = gtk_menu_button_new ();

  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (button), "open-menu-symbolic");
  gtk_menu_button_set_primary (GTK_MENU_BUTTON (button), TRUE);
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), create_menu, self, NULL);
  rw_access_title (button, _("Menu"));
  return button;
}

void
rw_window_build_header (RwWindow *self)
{
  GtkWidget *header = gtk_header_bar_new ();

  gtk_header_bar_set_title_widget (GTK_HEADER_BAR (header), title_widget (self));
  self->undo = icon_button ("edit-undo-symbolic", _("Undo"), "win.undo");
  self->redo = icon_button ("edit-redo-symbolic", _("Redo"), "win.redo");
  gtk_header_bar_pack_start (GTK_HEADER_BAR (header), text_button (_("Open"), _("Open a build"), "win.open"));
  gtk_header_bar_pack_start (GTK_HEADER_BAR (header),
                             text_button (_("Save"), _("Save the build"), "win.save"));
  gtk_header_bar_pack_start (GTK_HEADER_BAR (header), self->undo);
  gtk_header_bar_pack_start (GTK_HEADER_BAR (header), self->redo);
  gtk_header_bar_pack_end (GTK_HEADER_BAR (header), menu_button (self));
  gtk_header_bar_pack_end (GTK_HEADER_BAR (header),
                           text_button (_("Papers"), _("Write the papers for the bench"), "win.papers"));
  gtk_header_bar_pack_end (GTK_HEADER_BAR (header), units_buttons ());
  gtk_window_set_titlebar (GTK_WINDOW (self), header);
}

/* ---- refreshing ---- */

static const char *
saved_words (RwDocument *document)
{
  if (rw_document_modified (document))
    return _("Changes not saved");
  return rw_document_path (document) != NULL ? _("Saved") : _("Not saved yet");
}

/* What would be undone stands in the tooltip. */
static void
name_step (GtkWidget *button, const char *pattern, const char *plain, const char *step)
{
  g_autofree char *text = step != NULL ? g_strdup_printf (pattern, step) : g_strdup (plain);

  gtk_widget_set_tooltip_text (button, text);
}

void
rw_window_refresh_header (RwWindow *self)
{
  g_autofree char *title = rw_document_title (self->document);

  gtk_label_set_text (GTK_LABEL (self->title), title);
  gtk_label_set_text (GTK_LABEL (self->saved), saved_words (self->document));
  gtk_widget_set_tooltip_text (self->title, rw_document_path (self->document));
  gtk_window_set_title (GTK_WINDOW (self), title);
  name_step (self->undo, _("Undo: %s"), _("Nothing to undo"), rw_document_undo_name (self->document));
  name_step (self->redo, _("Redo: %s"), _("Nothing to redo"), rw_document_redo_name (self->document));
}
