#include "form.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/words.h"
#include "form_group.h"
#include "help_picture.h"

struct _RwForm
{
  GtkBox parent;

  RwDocument *document;
  GPtrArray  *groups; /* of RwFormGroup; none until it is first seen */

  GtkWidget *filter;
  GtkWidget *scroller;
  GtkWidget *list;
  GtkWidget *nothing; /* said where the filter leaves no row */
  GtkWidget *meaning_name, *meaning, *meaning_range;
  GtkWidget *picture;

  GtkWidget *reveal; /* to be brought into view once it has its place */
  guint      reveal_source;
};

G_DEFINE_FINAL_TYPE (RwForm, rw_form, GTK_TYPE_BOX)

/* ---- bringing things into view ---- */

/* Runs after the frame that lays out what has just been opened. */
static gboolean
reveal_now (gpointer user_data)
{
  RwForm *self = user_data;
  GtkAdjustment *scroll = gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (self->scroller));
  graphene_rect_t place;

  self->reveal_source = 0;
  if (self->reveal != NULL && gtk_widget_compute_bounds (self->reveal, self->list, &place))
    gtk_adjustment_clamp_page (scroll, place.origin.y, place.origin.y + place.size.height);
  g_clear_weak_pointer (&self->reveal);
  return G_SOURCE_REMOVE;
}

static void
bring_into_view (RwForm *self, GtkWidget *widget)
{
  g_set_weak_pointer (&self->reveal, widget);
  if (self->reveal_source == 0)
    self->reveal_source = g_idle_add_full (GDK_PRIORITY_REDRAW + 10, reveal_now, self, NULL);
}

/* ---- groups ---- */

static gboolean
control_held (GtkWidget *widget)
{
  GdkSeat *seat = gdk_display_get_default_seat (gtk_widget_get_display (widget));
  GdkDevice *keyboard = seat != NULL ? gdk_seat_get_keyboard (seat) : NULL;

  return keyboard != NULL && (gdk_device_get_modifier_state (keyboard) & GDK_CONTROL_MASK) != 0;
}

static void
close_others (RwForm *self, RwFormGroup *kept)
{
  for (guint i = 0; i < self->groups->len; i++)
    if (g_ptr_array_index (self->groups, i) != kept)
      rw_form_group_set_open (g_ptr_array_index (self->groups, i), FALSE);
}

static void
on_group_pressed (RwForm *self, RwFormGroup *group)
{
  gboolean open = !rw_form_group_is_open (group);

  if (open && !control_held (GTK_WIDGET (self)))
    close_others (self, group);
  rw_form_group_set_open (group, open);
  bring_into_view (self, rw_form_group_header (group));
}

static gboolean
filtering (RwForm *self)
{
  return *gtk_editable_get_text (GTK_EDITABLE (self->filter)) != '\0';
}

static void
on_filter (RwForm *self)
{
  g_autofree char *words = g_utf8_casefold (gtk_editable_get_text (GTK_EDITABLE (self->filter)), -1);
  gboolean any = FALSE;

  for (guint i = 0; i < self->groups->len; i++)
    {
      RwFormGroup *group = g_ptr_array_index (self->groups, i);

      rw_form_group_filter (group, filtering (self) ? words : NULL);
      any |= gtk_widget_get_visible (GTK_WIDGET (group));
    }
  gtk_widget_set_visible (self->nothing, !any);
}

/* Enter in the filter goes on to the first row that is left. */
static void
on_filter_activate (RwForm *self)
{
  gtk_widget_child_focus (self->scroller, GTK_DIR_TAB_FORWARD);
}

static void
on_stop_filter (RwForm *self)
{
  gtk_editable_set_text (GTK_EDITABLE (self->filter), "");
}

/* ---- the selection ---- */

/* A dimension that is also a parameter, such as the neck angle, has its row too. */
static int
selected_param (RwForm *self)
{
  RwSubject subject = rw_document_selection (self->document);
  g_autofree char *id = NULL;

  if (subject.param >= 0 || subject.slot < 0)
    return subject.param;
  id = rw_slot_id (subject.slot);
  return rw_param_find (id);
}

static void
explain (RwForm *self, int param)
{
  const RwParam *row = param >= 0 ? rw_param (param) : NULL;
  g_autofree char *range = row != NULL ? rw_range_words (row, rw_document_style (self->document)) : NULL;

  gtk_label_set_text (GTK_LABEL (self->meaning_name), row != NULL ? _(row->label) : _("Build"));
  gtk_label_set_text (GTK_LABEL (self->meaning), row == NULL ? _("Choose a value to read what it means.")
                                                 : *row->meaning != '\0' ? _(row->meaning) : "");
  gtk_widget_set_visible (self->meaning, row == NULL || *row->meaning != '\0');
  gtk_label_set_text (GTK_LABEL (self->meaning_range), range != NULL ? range : "");
  rw_help_picture_show (RW_HELP_PICTURE (self->picture), (RwSubject){ param, -1 });
}

static void
on_selected (RwForm *self)
{
  int param = selected_param (self);

  explain (self, param);
  for (guint i = 0; i < self->groups->len; i++)
    {
      RwFormGroup *group = g_ptr_array_index (self->groups, i);

      if (rw_form_group_owns (group, param) && !rw_form_group_is_open (group) && !filtering (self))
        {
          close_others (self, group);
          rw_form_group_set_open (group, TRUE);
        }
      if (rw_form_group_owns (group, param) && rw_form_group_is_open (group))
        bring_into_view (self, GTK_WIDGET (rw_form_group_row (group, param)));
      rw_form_group_mark (group, param);
    }
}

static void
on_changed (RwForm *self, guint what)
{
  for (guint i = 0; i < self->groups->len; i++)
    rw_form_group_refresh (g_ptr_array_index (self->groups, i), what);
  if (what & (RW_CHANGE_UNITS | RW_CHANGE_NUMBERS))
    explain (self, selected_param (self));
}

/* ---- building ---- */

static void
add_groups (RwForm *self)
{
  for (int first = 0, next; first < RW_PARAM_COUNT; first = next)
    {
      GtkWidget *group;

      for (next = first; next < RW_PARAM_COUNT && rw_param (next)->group == rw_param (first)->group;)
        next++;
      group = rw_form_group_new (self->document, first, next - first);
      g_signal_connect_object (group, "pressed", G_CALLBACK (on_group_pressed), self, G_CONNECT_SWAPPED);
      g_ptr_array_add (self->groups, group);
      gtk_box_append (GTK_BOX (self->list), group);
    }
}

/* The groups are made when the form is first seen: the window stands before that. */
static void
on_map (RwForm *self)
{
  if (self->groups->len > 0)
    return;
  add_groups (self);
  on_selected (self);
}

static void
build_filter (RwForm *self)
{
  self->filter = gtk_search_entry_new ();
  g_object_set (self->filter, "placeholder-text", _("Find a value"), NULL);
  gtk_widget_add_css_class (self->filter, "form-filter");
  rw_access_name (self->filter, _("Find a value"));
  g_signal_connect_object (self->filter, "search-changed", G_CALLBACK (on_filter), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->filter, "activate", G_CALLBACK (on_filter_activate), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->filter, "stop-search", G_CALLBACK (on_stop_filter), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self), self->filter);
}

static void
build_list (RwForm *self)
{
  self->nothing = gtk_label_new (_("No value is called that."));
  gtk_widget_add_css_class (self->nothing, "dim-label");
  gtk_widget_set_margin_top (self->nothing, 24);
  gtk_widget_hide (self->nothing);

  self->list = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_box_append (GTK_BOX (self->list), self->nothing);
  self->scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (self->scroller), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->scroller), self->list);
  gtk_widget_set_vexpand (self->scroller, TRUE);
  gtk_box_append (GTK_BOX (self), self->scroller);
}

static GtkWidget *
meaning_label (GtkWidget *box, const char *css_class)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, css_class);
  gtk_box_append (GTK_BOX (box), label);
  return label;
}

static void
build_meaning (RwForm *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);

  gtk_widget_add_css_class (box, "meaning");
  gtk_box_append (GTK_BOX (box), line);
  self->meaning_name = meaning_label (line, "strong");
  gtk_widget_set_hexpand (self->meaning_name, TRUE);
  self->meaning_range = meaning_label (line, "small");
  gtk_label_set_wrap (GTK_LABEL (self->meaning_range), FALSE);
  self->meaning = meaning_label (box, "small");
  self->picture = rw_help_picture_new (self->document);
  gtk_box_append (GTK_BOX (box), self->picture);
  gtk_box_append (GTK_BOX (self), box);
}

static void
rw_form_dispose (GObject *object)
{
  RwForm *self = RW_FORM (object);

  g_clear_handle_id (&self->reveal_source, g_source_remove);
  g_clear_weak_pointer (&self->reveal);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (rw_form_parent_class)->dispose (object);
}

static void
rw_form_finalize (GObject *object)
{
  g_ptr_array_unref (RW_FORM (object)->groups);
  G_OBJECT_CLASS (rw_form_parent_class)->finalize (object);
}

static void
rw_form_class_init (RwFormClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_form_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_form_finalize;
}

static void
rw_form_init (RwForm *self)
{
  self->groups = g_ptr_array_new ();
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_widget_add_css_class (GTK_WIDGET (self), "form");
  g_signal_connect (self, "map", G_CALLBACK (on_map), NULL);
}

GtkWidget *
rw_form_new (RwDocument *document)
{
  RwForm *self = g_object_new (RW_TYPE_FORM, NULL);

  self->document = g_object_ref (document);
  build_filter (self);
  build_list (self);
  build_meaning (self);
  explain (self, -1);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "selected", G_CALLBACK (on_selected), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

void
rw_form_focus_filter (RwForm *self)
{
  gtk_widget_grab_focus (self->filter);
}
