#include "window_private.h"

#include <glib/gi18n.h>

#include "base/dialogs.h"
#include "base/theme.h"

#define LEAST_DRAWER 100
#define FORM_WIDTH 340    /* at first, for text of the usual size */
#define DRAWER_HEIGHT 216
#define MOST_WIDTH 0.42   /* of the window for the form */
#define MOST_HEIGHT 0.34  /* for the drawer */
#define TOUR_MS 800 /* from the first frame to the tour */

G_DEFINE_FINAL_TYPE (RwWindow, rw_window, GTK_TYPE_APPLICATION_WINDOW)

/* ---- panes ---- */

static void
show_drawer (RwWindow *self, gboolean shown)
{
  g_action_group_change_action_state (G_ACTION_GROUP (self), "show-drawer", g_variant_new_boolean (shown));
}

static void
show_page (RwWindow *self, RwDrawerPage page)
{
  show_drawer (self, TRUE);
  rw_drawer_show (RW_DRAWER (self->drawer), page);
}

static void
on_result_pressed (RwWindow *self, int slot)
{
  show_page (self, RW_PAGE_DIMENSIONS);
  rw_document_select (self->document, RW_SUBJECT_SLOT (slot));
}

static void
on_findings_pressed (RwWindow *self)
{
  gboolean there = gtk_widget_get_visible (self->drawer)
                   && rw_drawer_page (RW_DRAWER (self->drawer)) == RW_PAGE_FINDINGS;

  if (there)
    show_drawer (self, FALSE);
  else
    show_page (self, RW_PAGE_FINDINGS);
}

static void
on_hint (RwWindow *self, const char *hint)
{
  rw_foot_hint (RW_FOOT (self->foot), hint);
}

static void
on_sheet_moved (RwWindow *self, RwSheetPane *sheet)
{
  RwCanvas *canvas = rw_sheet_pane_canvas (sheet);
  RwPoint place;

  rw_foot_set_scale (RW_FOOT (self->foot), rw_canvas_scale (canvas));
  rw_foot_set_pointer (RW_FOOT (self->foot), rw_canvas_pointer (canvas, &place) ? &place : NULL);
}

static GtkWidget *
new_sheet (RwWindow *self, RwView view)
{
  GtkWidget *sheet = rw_sheet_pane_new (self->document, view);

  g_signal_connect_object (sheet, "hint", G_CALLBACK (on_hint), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (sheet, "moved", G_CALLBACK (on_sheet_moved), self, G_CONNECT_SWAPPED);
  return sheet;
}

/* The second sheet is made when it is first asked for. */
void
rw_window_show_beside (RwWindow *self, gboolean shown)
{
  GtkPaned *sheets = GTK_PANED (self->sheets);

  if (gtk_paned_get_end_child (sheets) == NULL && shown)
    {
      gtk_paned_set_end_child (sheets, new_sheet (self, RW_VIEW_POT));
      gtk_paned_set_position (sheets, gtk_widget_get_width (self->sheets) * 3 / 5);
    }
  if (gtk_paned_get_end_child (sheets) != NULL)
    gtk_widget_set_visible (gtk_paned_get_end_child (sheets), shown);
}

/* ---- building ---- */

static GtkWidget *
new_paned (GtkOrientation orientation, gboolean start_grows, gboolean end_grows)
{
  GtkWidget *paned = gtk_paned_new (orientation);

  gtk_paned_set_resize_start_child (GTK_PANED (paned), start_grows);
  gtk_paned_set_resize_end_child (GTK_PANED (paned), end_grows);
  gtk_paned_set_shrink_start_child (GTK_PANED (paned), FALSE);
  gtk_paned_set_shrink_end_child (GTK_PANED (paned), FALSE);
  return paned;
}

/* At the first start, when all has its place, unless the maker has gone on to another window. */
static gboolean
start_tour (gpointer user_data)
{
  g_autoptr (RwWindow) self = user_data;

  if (gtk_widget_get_mapped (GTK_WIDGET (self)) && rw_window_is_untouched (self)
      && g_list_model_get_n_items (gtk_window_get_toplevels ()) == 1)
    {
      rw_window_start_tour (self);
      self->memory.toured = TRUE;
      rw_memory_save (&self->memory);
    }
  return G_SOURCE_REMOVE;
}

/* Once the empty window has been painted, what it holds is laid out and drawn. */
static void
on_first_frame (GtkWidget *box, GdkFrameClock *clock)
{
  RwWindow *self = RW_WINDOW (gtk_widget_get_root (box));

  gtk_widget_show (box);
  g_signal_handlers_disconnect_by_data (clock, box);
  if (!self->memory.toured)
    g_timeout_add (TOUR_MS, start_tour, g_object_ref (self));
}

static void
on_realize (GtkWidget *window, GtkWidget *box)
{
  g_signal_connect_object (gtk_widget_get_frame_clock (window), "after-paint", G_CALLBACK (on_first_frame), box,
                           G_CONNECT_SWAPPED);
}

static void
build_panes (RwWindow *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  self->form = rw_form_new (self->document);
  self->drawer = rw_drawer_new (self->document);
  self->foot = rw_foot_new (self->document);

  self->sheets = new_paned (GTK_ORIENTATION_HORIZONTAL, TRUE, TRUE);
  gtk_paned_set_start_child (GTK_PANED (self->sheets), new_sheet (self, RW_VIEW_WHOLE));

  self->drawer_pane = new_paned (GTK_ORIENTATION_VERTICAL, TRUE, FALSE);
  gtk_paned_set_start_child (GTK_PANED (self->drawer_pane), self->sheets);
  gtk_paned_set_end_child (GTK_PANED (self->drawer_pane), self->drawer);

  self->form_pane = new_paned (GTK_ORIENTATION_HORIZONTAL, FALSE, TRUE);
  gtk_paned_set_start_child (GTK_PANED (self->form_pane), self->form);
  gtk_paned_set_end_child (GTK_PANED (self->form_pane), self->drawer_pane);
  gtk_widget_set_vexpand (self->form_pane, TRUE);

  gtk_box_append (GTK_BOX (box), self->form_pane);
  gtk_box_append (GTK_BOX (box), self->foot);
  gtk_window_set_child (GTK_WINDOW (self), box);
  gtk_widget_hide (box);
  g_signal_connect_object (self, "realize", G_CALLBACK (on_realize), box, 0);
}

/* ---- what is remembered ---- */

/* Once the drawer has its remembered height, that height is no longer its least. */
static gboolean
free_drawer (GtkWidget *drawer, GdkFrameClock *clock, gpointer user_data)
{
  GtkPaned *pane = user_data;

  if (gtk_widget_get_height (drawer) == 0)
    return G_SOURCE_CONTINUE;
  gtk_paned_set_position (pane, gtk_paned_get_position (pane));
  gtk_widget_set_size_request (drawer, -1, LEAST_DRAWER);
  return G_SOURCE_REMOVE;
}

/* Until the maker has chosen, form and drawer have the room that the size of the text needs. */
static void
choose_sizes (RwWindow *self)
{
  double scale = MAX (1, rw_theme_text_scale (GTK_WIDGET (self)));

  if (self->memory.form_width == 0)
    self->memory.form_width = (int) MIN (FORM_WIDTH * scale, MOST_WIDTH * self->memory.width);
  if (self->memory.drawer_height == 0)
    self->memory.drawer_height = (int) MIN (DRAWER_HEIGHT * scale, MOST_HEIGHT * self->memory.height);
}

static void
recall (RwWindow *self)
{
  self->memory = rw_memory_load ();
  choose_sizes (self);
  rw_document_set_units (self->document, self->memory.units);
  gtk_window_set_default_size (GTK_WINDOW (self), self->memory.width, self->memory.height);
  if (self->memory.maximised)
    gtk_window_maximize (GTK_WINDOW (self));
  gtk_paned_set_position (GTK_PANED (self->form_pane), self->memory.form_width);
  gtk_widget_set_visible (self->form, self->memory.form_shown);

  /* With no position of its own a paned gives the end child what it asks for. */
  gtk_widget_set_size_request (self->drawer, -1, self->memory.drawer_height);
  gtk_widget_set_visible (self->drawer, self->memory.drawer_shown);
  gtk_widget_add_tick_callback (self->drawer, free_drawer, self->drawer_pane, NULL);
}

static void
remember (RwWindow *self)
{
  int width, height;

  gtk_window_get_default_size (GTK_WINDOW (self), &width, &height);
  self->memory.maximised = gtk_window_is_maximized (GTK_WINDOW (self));
  self->memory.width = width;
  self->memory.height = height;
  self->memory.form_shown = gtk_widget_get_visible (self->form);
  self->memory.drawer_shown = gtk_widget_get_visible (self->drawer);
  if (self->memory.form_shown)
    self->memory.form_width = gtk_paned_get_position (GTK_PANED (self->form_pane));
  if (self->memory.drawer_shown)
    self->memory.drawer_height = gtk_widget_get_height (self->drawer);
  self->memory.units = rw_document_style (self->document).units;
  rw_memory_save (&self->memory);
}

/* ---- leaving ---- */

static void
leave (RwWindow *self)
{
  self->leaving = TRUE;
  gtk_window_close (GTK_WINDOW (self));
}

static gboolean
rw_window_close_request (GtkWindow *window)
{
  RwWindow *self = RW_WINDOW (window);

  if (!self->leaving && rw_document_modified (self->document))
    {
      rw_window_unless_unsaved (self, leave);
      return TRUE;
    }
  remember (self);
  return GTK_WINDOW_CLASS (rw_window_parent_class)->close_request (window);
}

static void
on_unsaved_reply (RwReply reply, gpointer user_data)
{
  RwWindow *self = user_data;
  RwWindowFunc go_on = self->go_on;

  if (reply == RW_REPLY_GO)
    {
      /* Goes on from there, when the file is safely written. */
      rw_window_save (self);
      return;
    }
  self->go_on = NULL;
  if (reply == RW_REPLY_OTHER)
    go_on (self);
}

void
rw_window_unless_unsaved (RwWindow *self, RwWindowFunc go_on)
{
  g_autofree char *title = NULL, *question = NULL;

  if (!rw_document_modified (self->document))
    {
      go_on (self);
      return;
    }
  self->go_on = go_on;
  title = rw_document_title (self->document);
  question = g_strdup_printf (_("Save the changes to “%s”?"), title);
  rw_dialog_ask (GTK_WINDOW (self),
                 &(RwQuestion){
                     .title = _("Unsaved changes"),
                     .question = question,
                     .details = _("What has been changed since it was last saved is lost otherwise."),
                     .stay = _("_Cancel"),
                     .other = _("_Don’t save"),
                     .go = _("_Save"),
                 },
                 on_unsaved_reply, self);
}

/* ---- making and unmaking ---- */

static void
on_saved_state (RwWindow *self)
{
  rw_window_refresh_header (self);
  rw_window_refresh_actions (self);
}

static void
rw_window_dispose (GObject *object)
{
  RwWindow *self = RW_WINDOW (object);

  g_clear_weak_pointer (&self->papers);
  g_clear_weak_pointer (&self->guide);
  g_clear_weak_pointer (&self->keys);
  g_clear_object (&self->recent);
  g_clear_pointer (&self->wanted, g_free);
  g_clear_pointer (&self->drafts, rw_draft_keeper_free);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (rw_window_parent_class)->dispose (object);
}

static void
rw_window_class_init (RwWindowClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_window_dispose;
  GTK_WINDOW_CLASS (klass)->close_request = rw_window_close_request;
}

static void
rw_window_init (RwWindow *self)
{
  self->document = rw_document_new ();
  self->drafts = rw_draft_keeper_new (self->document);
  rw_window_build_header (self);
  build_panes (self);
  recall (self);
  rw_window_add_actions (self);
  rw_window_add_file_actions (self);
  on_saved_state (self);
  g_signal_connect_object (self->foot, "result-pressed", G_CALLBACK (on_result_pressed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->foot, "findings-pressed", G_CALLBACK (on_findings_pressed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->document, "saved-state", G_CALLBACK (on_saved_state), self,
                           G_CONNECT_SWAPPED);
}

GtkWidget *
rw_window_new (GtkApplication *application)
{
  return g_object_new (RW_TYPE_WINDOW, "application", application, NULL);
}

RwDocument *
rw_window_document (RwWindow *self)
{
  return self->document;
}

gboolean
rw_window_is_untouched (RwWindow *self)
{
  return rw_document_path (self->document) == NULL && !rw_document_modified (self->document);
}
