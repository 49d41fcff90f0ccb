#include "reading_entry.h"

#include <glib/gi18n.h>
#include <math.h>
#include <string.h>

#include "base/access.h"
#include "base/look.h"
#include "base/words.h"
#include "check/listing.h"
#include "document/care_work.h"

struct _RwReadingEntry
{
  GtkBox parent;

  RwDocument *document;
  RwCareWork *care;   /* for what it may be off by */
  char       *id;
  GtkWidget  *entry;
  GtkWidget  *more;   /* opens date and note */
  GtkWidget  *date, *note;
  GtkWidget  *result; /* what came of the readings, or what is wrong with them */
};

G_DEFINE_FINAL_TYPE (RwReadingEntry, rw_reading_entry, GTK_TYPE_BOX)

static const char *
translate (const char *english)
{
  return _(english);
}

static const RwEntry *
ledger_entry (RwReadingEntry *self)
{
  return rw_ledger_find (rw_document_project (self->document)->ledger, self->id);
}

/* ---- what is shown ---- */

static void
show_text (GtkWidget *entry, const char *text)
{
  if (!g_str_equal (gtk_editable_get_text (GTK_EDITABLE (entry)), text))
    gtk_editable_set_text (GTK_EDITABLE (entry), text);
}

/* "Mean 279.20 mm, spread 0.20 mm"; NULL for a single reading.  New. */
static char *
mean_words (const RwEntry *entry, const char *unit, RwStyle style)
{
  g_autofree char *mean = NULL, *spread = NULL;

  if (entry->readings->len < 2)
    return NULL;
  mean = rw_number_words (rw_entry_mean (entry), unit, style);
  spread = rw_number_words (rw_entry_spread (entry), unit, style);
  return g_strdup_printf (_("mean %s, spread %s"), mean, spread);
}

/* How far off it came out, and whether that is more than it may be; NULL where nothing is off.  New. */
static char *
deviation_words (RwReadingEntry *self, const RwReadingRow *row, RwStyle style, gboolean *out)
{
  RwAllowance allowance = rw_care_allowance (rw_care_work_care (self->care), self->id);
  double off = row->measured - row->asked;
  g_autofree char *number = NULL, *within = NULL;

  *out = rw_allowance_passed (allowance, off);
  if (!isfinite (off) || !rw_shown_differ (off, 0, row->unit))
    return NULL;
  number = rw_number_words (fabs (off), row->unit, style);
  if (!*out)
    return g_strdup_printf (off > 0 ? _("%s over") : _("%s under"), number);
  within = rw_number_words (allowance.within, row->unit, rw_style_fine (style));
  if (allowance.asked)
    return g_strdup_printf (off > 0 ? _("%s over, and ± %s is asked") : _("%s under, and ± %s is asked"), number,
                            within);
  return g_strdup_printf (off > 0 ? _("%s over, out of tolerance") : _("%s under, out of tolerance"), number);
}

static void
show_result (RwReadingEntry *self)
{
  RwStyle style = rw_document_style (self->document);
  const RwEntry *entry = ledger_entry (self);
  g_autofree char *mean = NULL, *deviation = NULL;
  const char *words[3] = { NULL };
  g_autofree char *text = NULL;
  gboolean out = FALSE;
  int count = 0;
  RwReadingRow row;

  if (entry != NULL
      && rw_listing_find (self->id, rw_document_project (self->document), rw_document_now (self->document),
                          rw_document_planned (self->document), &row))
    {
      mean = mean_words (entry, row.unit, style);
      deviation = deviation_words (self, &row, style, &out);
    }
  if (mean != NULL)
    words[count++] = mean;
  if (deviation != NULL)
    words[count++] = deviation;
  text = g_strjoinv ("; ", (char **) words);
  gtk_label_set_text (GTK_LABEL (self->result), text);
  rw_look_set (self->result, "complaint", out);
}

static void
show_entry (RwReadingEntry *self)
{
  const RwEntry *entry = ledger_entry (self);
  g_autofree char *text
      = entry != NULL ? rw_readings_write (entry, rw_document_style (self->document)) : g_strdup ("");

  show_text (self->entry, text);
  rw_look_refused (self->entry, FALSE);
  show_text (self->date, entry != NULL ? entry->date : "");
  show_text (self->note, entry != NULL ? entry->note : "");
  gtk_widget_set_sensitive (self->more, entry != NULL);
  rw_look_set (self->more, "noted", entry != NULL && entry->note[0] != '\0');
  gtk_widget_set_tooltip_text (self->entry, entry != NULL && entry->note[0] != '\0' ? entry->note : NULL);
}

static gboolean
has_focus (GtkWidget *widget)
{
  GtkRoot *root = gtk_widget_get_root (widget);
  GtkWidget *focus = root != NULL ? gtk_root_get_focus (root) : NULL;

  return focus != NULL && gtk_widget_is_ancestor (focus, widget);
}

void
rw_reading_entry_refresh (RwReadingEntry *self)
{
  if (!has_focus (self->entry) || !gtk_widget_has_css_class (self->entry, "error"))
    {
      show_entry (self);
      show_result (self);
    }
}

/* ---- what is entered ---- */

static void
complain (RwReadingEntry *self, GtkWidget *entry, const char *message)
{
  rw_look_refused (entry, TRUE);
  rw_look_set (self->result, "complaint", TRUE);
  gtk_label_set_text (GTK_LABEL (self->result), message);
}

static void
take_readings (RwReadingEntry *self)
{
  const RwEntry *old = ledger_entry (self);
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entry));
  g_autofree char *shown
      = old != NULL ? rw_readings_write (old, rw_document_style (self->document)) : g_strdup ("");
  g_autoptr (GError) error = NULL;

  if (g_str_equal (text, shown))
    return;
  rw_look_refused (self->entry, FALSE);
  if (!rw_document_measure (self->document, self->id, text, &error))
    complain (self, self->entry, error->message);
}

static void
take_note (RwReadingEntry *self)
{
  const RwEntry *old = ledger_entry (self);
  const char *date = gtk_editable_get_text (GTK_EDITABLE (self->date));
  const char *note = gtk_editable_get_text (GTK_EDITABLE (self->note));
  g_autoptr (GError) error = NULL;

  if (old == NULL || (g_str_equal (date, old->date) && g_str_equal (note, old->note)))
    return;
  rw_look_refused (self->date, FALSE);
  if (!rw_document_annotate (self->document, self->id, date, note, &error))
    complain (self, self->date, error->message);
}

static void
on_note_done (RwReadingEntry *self)
{
  take_note (self);
  gtk_menu_button_popdown (GTK_MENU_BUTTON (self->more));
}

/* ---- making and unmaking ---- */

static GtkWidget *
line_new (const char *title, GtkWidget *entry)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8), *label = gtk_label_new (title);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_width_chars (GTK_LABEL (label), 6);
  gtk_widget_set_hexpand (entry, TRUE);
  rw_access_name (entry, title);
  gtk_box_append (GTK_BOX (line), label);
  gtk_box_append (GTK_BOX (line), entry);
  return line;
}

static void
build_more (RwReadingEntry *self)
{
  GtkWidget *popover = gtk_popover_new (), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);

  self->date = gtk_entry_new ();
  self->note = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (self->note), 30);
  gtk_entry_set_placeholder_text (GTK_ENTRY (self->date), "2026-05-04");
  g_signal_connect_object (self->date, "activate", G_CALLBACK (on_note_done), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->note, "activate", G_CALLBACK (on_note_done), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (popover, "closed", G_CALLBACK (take_note), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (box), line_new (_("Date"), self->date));
  gtk_box_append (GTK_BOX (box), line_new (_("Note"), self->note));
  gtk_popover_set_child (GTK_POPOVER (popover), box);

  self->more = gtk_menu_button_new ();
  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (self->more), "document-edit-symbolic");
  gtk_menu_button_set_has_frame (GTK_MENU_BUTTON (self->more), FALSE);
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (self->more), popover);
}

static void
rw_reading_entry_dispose (GObject *object)
{
  RwReadingEntry *self = RW_READING_ENTRY (object);

  g_clear_object (&self->care);
  g_clear_object (&self->document);
  g_clear_pointer (&self->id, g_free);
  G_OBJECT_CLASS (rw_reading_entry_parent_class)->dispose (object);
}

static void
rw_reading_entry_class_init (RwReadingEntryClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_reading_entry_dispose;
}

static void
rw_reading_entry_init (RwReadingEntry *self)
{
  GtkEventController *focus = gtk_event_controller_focus_new ();

  gtk_box_set_spacing (GTK_BOX (self), 4);
  self->entry = gtk_entry_new ();
  /* Figures read from left to right in every language. */
  gtk_widget_set_direction (self->entry, GTK_TEXT_DIR_LTR);
  gtk_editable_set_width_chars (GTK_EDITABLE (self->entry), 16);
  g_signal_connect_object (self->entry, "activate", G_CALLBACK (take_readings), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (focus, "leave", G_CALLBACK (take_readings), self, G_CONNECT_SWAPPED);
  gtk_widget_add_controller (self->entry, focus);
  build_more (self);

  self->result = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->result), 0);
  gtk_label_set_ellipsize (GTK_LABEL (self->result), PANGO_ELLIPSIZE_END);
  gtk_widget_set_hexpand (self->result, TRUE);
  gtk_widget_add_css_class (self->result, "reading-result");
  gtk_box_append (GTK_BOX (self), self->entry);
  gtk_box_append (GTK_BOX (self), self->more);
  gtk_box_append (GTK_BOX (self), self->result);
}

GtkWidget *
rw_reading_entry_new (RwDocument *document, const char *id)
{
  RwReadingEntry *self = g_object_new (RW_TYPE_READING_ENTRY, NULL);
  g_autofree char *label = rw_reading_label (id, translate);
  g_autofree char *name = g_strdup_printf (_("Measured: %s"), label);
  g_autofree char *more = g_strdup_printf (_("Date and note: %s"), label);

  self->document = g_object_ref (document);
  self->care = rw_care_work_of (document);
  self->id = g_strdup (id);
  rw_access_name (self->entry, name);
  gtk_entry_set_placeholder_text (GTK_ENTRY (self->entry), _("One, or several by ;"));
  rw_access_title (self->more, more);
  rw_reading_entry_refresh (self);
  return GTK_WIDGET (self);
}
