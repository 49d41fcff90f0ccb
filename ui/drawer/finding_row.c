#include "finding_row.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/mark.h"
#include "base/words.h"
#include "check/limit.h"
#include "making/remedy.h"

struct _RwFindingRow
{
  GtkListBoxRow parent;

  RwDocument      *document;
  const RwFinding *finding;
  GPtrArray       *held; /* the findings that it is one of: the document may have others by now */

  GtkWidget *mark, *severity, *text;
  GtkWidget *accepted; /* since when, and why */
  GtkWidget *arrow;
  GtkWidget *body;     /* what is there when open */
  GtkWidget *reason;   /* entry in the body; NULL: none */
};

G_DEFINE_FINAL_TYPE (RwFindingRow, rw_finding_row, GTK_TYPE_LIST_BOX_ROW)

/* ---- remedies ---- */

static const RwRemedy *
remedy_of (RwFindingRow *self, GtkWidget *button)
{
  const GPtrArray *remedies = rw_document_remedies (self->document, self->finding);
  guint place = GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (button), "place"));

  return place < remedies->len ? g_ptr_array_index (remedies, place) : NULL;
}

static char *
remedy_words (RwFindingRow *self, const RwRemedy *remedy)
{
  RwRemedy said = *remedy;

  /* A word in it may be the name of a size, which has a translation, or of a thread, which has none. */
  said.word = remedy->word != NULL ? (char *) _(remedy->word) : NULL;
  return rw_remedy_words (&said, _(remedy->pattern), rw_document_style (self->document));
}

static void
on_try (GtkWidget *button)
{
  RwFindingRow *self = RW_FINDING_ROW (gtk_widget_get_ancestor (button, RW_TYPE_FINDING_ROW));
  const RwRemedy *remedy = remedy_of (self, button);

  if (remedy != NULL)
    rw_document_preview (self->document, &remedy->design);
}

static void
on_leave (RwFindingRow *self)
{
  rw_document_preview (self->document, NULL);
}

static void
on_apply (RwFindingRow *self, GtkWidget *button)
{
  const RwRemedy *remedy = remedy_of (self, button);

  if (remedy == NULL)
    return;
  g_autofree char *name = remedy_words (self, remedy);
  rw_document_apply (self->document, &remedy->design, name);
}

static GtkWidget *
remedy_button (RwFindingRow *self, const RwRemedy *remedy, guint place)
{
  g_autofree char *words = remedy_words (self, remedy);
  GtkWidget *button = gtk_button_new (), *label = gtk_label_new (words);
  GtkEventController *pointer = gtk_event_controller_motion_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_button_set_child (GTK_BUTTON (button), label);
  gtk_widget_add_css_class (button, "remedy");
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  rw_access_name (button, words);
  rw_access_describe (button, _("Pointed at, it is shown on the drawing; pressed, it is done"));
  g_object_set_data (G_OBJECT (button), "place", GUINT_TO_POINTER (place));

  g_signal_connect_object (pointer, "enter", G_CALLBACK (on_try), button, G_CONNECT_SWAPPED);
  g_signal_connect_object (pointer, "leave", G_CALLBACK (on_leave), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (focus, "enter", G_CALLBACK (on_try), button, G_CONNECT_SWAPPED);
  g_signal_connect_object (focus, "leave", G_CALLBACK (on_leave), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (button, "clicked", G_CALLBACK (on_apply), self, G_CONNECT_SWAPPED);
  gtk_widget_add_controller (button, pointer);
  gtk_widget_add_controller (button, focus);
  return button;
}

static void
add_remedies (RwFindingRow *self)
{
  const GPtrArray *remedies = rw_document_remedies (self->document, self->finding);
  GtkWidget *heading = gtk_label_new (remedies->len > 0 ? _("What helps")
                                                        : _("No single change is known to set this right."));

  gtk_widget_add_css_class (heading, "small");
  gtk_widget_add_css_class (heading, "dim-label");
  gtk_label_set_xalign (GTK_LABEL (heading), 0);
  gtk_box_append (GTK_BOX (self->body), heading);
  for (guint i = 0; i < remedies->len; i++)
    gtk_box_append (GTK_BOX (self->body), remedy_button (self, g_ptr_array_index (remedies, i), i));
}

/* ---- the limit that it comes from ---- */

static void
on_limit (RwFindingRow *self, GtkWidget *button)
{
  RwParamId id = (RwParamId) GPOINTER_TO_INT (g_object_get_data (G_OBJECT (button), "limit"));

  rw_document_select (self->document, (RwSubject){ (int) id, -1 });
}

static GtkWidget *
limit_button (RwFindingRow *self, RwParamId id)
{
  /* Translators: the name of a limit; pressed, its row in the form is shown */
  g_autofree char *words = g_strdup_printf (_("Show the limit: %s"), _(rw_param (id)->label));
  GtkWidget *button = gtk_button_new (), *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_button_set_child (GTK_BUTTON (button), label);
  gtk_button_set_has_frame (GTK_BUTTON (button), FALSE);
  gtk_widget_add_css_class (button, "remedy");
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  rw_access_name (button, words);
  g_object_set_data (G_OBJECT (button), "limit", GINT_TO_POINTER ((int) id));
  g_signal_connect_object (button, "clicked", G_CALLBACK (on_limit), self, G_CONNECT_SWAPPED);
  return button;
}

static void
add_limits (RwFindingRow *self)
{
  g_autoptr (GArray) limits
      = rw_finding_limits (self->finding, rw_document_design (self->document), rw_document_measured (self->document),
                           rw_document_now (self->document));

  for (guint i = 0; i < limits->len; i++)
    gtk_box_append (GTK_BOX (self->body), limit_button (self, g_array_index (limits, RwParamId, i)));
}

/* ---- accepting ---- */

static void
on_accept (RwFindingRow *self)
{
  g_autofree char *reason = g_strstrip (g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->reason))));

  if (*reason != '\0')
    rw_document_accept (self->document, self->finding, reason);
  else
    gtk_widget_grab_focus (self->reason);
}

static void
on_unaccept (RwFindingRow *self)
{
  rw_document_unaccept (self->document, self->finding);
}

static void
on_reason (RwFindingRow *self, GtkEditable *entry)
{
  GtkWidget *button = gtk_widget_get_next_sibling (self->reason);

  gtk_widget_set_sensitive (button, *gtk_editable_get_text (entry) != '\0');
}

static void
add_acceptance (RwFindingRow *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6), *button = gtk_button_new ();
  gboolean open = self->finding->reason == NULL;

  gtk_widget_add_css_class (line, "acceptance");
  if (open)
    {
      self->reason = gtk_entry_new ();
      gtk_entry_set_placeholder_text (GTK_ENTRY (self->reason), _("Reason to leave it as it is"));
      gtk_editable_set_width_chars (GTK_EDITABLE (self->reason), 28);
      rw_access_name (self->reason, _("Reason to leave it as it is"));
      g_signal_connect_object (self->reason, "activate", G_CALLBACK (on_accept), self, G_CONNECT_SWAPPED);
      g_signal_connect_object (self->reason, "changed", G_CALLBACK (on_reason), self, G_CONNECT_SWAPPED);
      gtk_box_append (GTK_BOX (line), self->reason);
    }
  gtk_button_set_label (GTK_BUTTON (button), open ? _("Accept") : _("Accept no more"));
  gtk_widget_set_sensitive (button, !open);
  g_signal_connect_object (button, "clicked", open ? G_CALLBACK (on_accept) : G_CALLBACK (on_unaccept), self,
                           G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (line), button);
  gtk_box_append (GTK_BOX (self->body), line);
}

/* ---- showing ---- */

static void
clear_body (RwFindingRow *self)
{
  GtkWidget *child;

  self->reason = NULL;
  while ((child = gtk_widget_get_first_child (self->body)) != NULL)
    gtk_box_remove (GTK_BOX (self->body), child);
}

static void
show_accepted (RwFindingRow *self)
{
  const RwFinding *finding = self->finding;
  g_autofree char *text = NULL;

  gtk_widget_set_visible (self->accepted, finding->reason != NULL);
  if (finding->reason == NULL)
    return;
  text = *finding->accepted_on != '\0'
           /* Translators: a date, and the reason that was given */
           ? g_strdup_printf (_("Accepted on %s: %s"), finding->accepted_on, finding->reason)
           : g_strdup_printf (_("Accepted: %s"), finding->reason);
  gtk_label_set_text (GTK_LABEL (self->accepted), text);
}

void
rw_finding_row_show (RwFindingRow *self, const RwFinding *finding, gboolean open)
{
  g_autofree char *words = rw_finding_text (finding, rw_document_style (self->document));
  g_autofree char *name = g_strdup_printf ("%s. %s", rw_severity_words (finding->severity), words);

  self->finding = finding;
  g_clear_pointer (&self->held, g_ptr_array_unref);
  self->held = g_ptr_array_ref ((GPtrArray *) rw_document_findings (self->document));
  rw_mark_set (RW_MARK (self->mark), finding->severity);
  gtk_label_set_text (GTK_LABEL (self->severity), rw_severity_words (finding->severity));
  gtk_label_set_text (GTK_LABEL (self->text), words);
  rw_access_name (GTK_WIDGET (self), name);
  gtk_accessible_update_state (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_STATE_EXPANDED, open, -1);
  gtk_image_set_from_icon_name (GTK_IMAGE (self->arrow), open ? "pan-down-symbolic" : "pan-end-symbolic");
  show_accepted (self);

  clear_body (self);
  gtk_widget_set_visible (self->body, open);
  if (!open)
    return;
  if (finding->reason == NULL)
    add_remedies (self);
  add_limits (self);
  add_acceptance (self);
}

const RwFinding *
rw_finding_row_finding (RwFindingRow *self)
{
  return self->finding;
}

/* ---- making and unmaking ---- */

static GtkWidget *
label_new (const char *css_class)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, css_class);
  return label;
}

static void
rw_finding_row_dispose (GObject *object)
{
  g_clear_object (&RW_FINDING_ROW (object)->document);
  G_OBJECT_CLASS (rw_finding_row_parent_class)->dispose (object);
}

static void
rw_finding_row_finalize (GObject *object)
{
  g_clear_pointer (&RW_FINDING_ROW (object)->held, g_ptr_array_unref);
  G_OBJECT_CLASS (rw_finding_row_parent_class)->finalize (object);
}

static void
rw_finding_row_class_init (RwFindingRowClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_finding_row_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_finding_row_finalize;
}

static void
rw_finding_row_init (RwFindingRow *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 10);
  GtkWidget *words = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  self->mark = rw_mark_new (RW_NOTE);
  self->severity = label_new ("finding-title");
  self->text = label_new ("finding-text");
  self->accepted = label_new ("dim-label");
  self->arrow = gtk_image_new ();
  self->body = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  gtk_widget_add_css_class (line, "finding");
  gtk_widget_add_css_class (self->body, "finding-body");
  gtk_label_set_width_chars (GTK_LABEL (self->severity), 7);
  gtk_label_set_wrap (GTK_LABEL (self->text), TRUE);
  gtk_label_set_wrap (GTK_LABEL (self->accepted), TRUE);
  gtk_widget_set_hexpand (words, TRUE);
  gtk_widget_set_valign (self->mark, GTK_ALIGN_START);
  gtk_widget_set_valign (self->severity, GTK_ALIGN_START);
  gtk_widget_set_valign (self->arrow, GTK_ALIGN_START);
  gtk_box_append (GTK_BOX (words), self->text);
  gtk_box_append (GTK_BOX (words), self->accepted);
  gtk_box_append (GTK_BOX (words), self->body);
  gtk_box_append (GTK_BOX (line), self->mark);
  gtk_box_append (GTK_BOX (line), self->severity);
  gtk_box_append (GTK_BOX (line), words);
  gtk_box_append (GTK_BOX (line), self->arrow);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (self), line);
}

GtkWidget *
rw_finding_row_new (RwDocument *document)
{
  RwFindingRow *self = g_object_new (RW_TYPE_FINDING_ROW, NULL);

  self->document = g_object_ref (document);
  return GTK_WIDGET (self);
}
