#include "form_group.h"

#include <glib/gi18n.h>
#include <string.h>

#include "base/access.h"
#include "base/mark.h"
#include "form_summary.h"

struct _RwFormGroup
{
  GtkBox parent;

  RwDocument *document;
  RwParamId   first;
  int         count;
  gboolean    open;
  char       *filter; /* casefolded words that rows must hold; NULL: all are shown */

  GtkWidget *header;
  GtkWidget *arrow;
  GtkWidget *summary;
  GtkWidget *mark;
  GtkWidget *body;  /* NULL until first opened */
  GtkWidget **rows; /* of RwFormRow, count of them, once there is a body; NULL where none was needed yet */
};

G_DEFINE_FINAL_TYPE (RwFormGroup, rw_form_group, GTK_TYPE_BOX)

static guint pressed_signal;

static void
on_header_clicked (RwFormGroup *self)
{
  g_signal_emit (self, pressed_signal, 0);
}

/* ---- building ---- */

static GtkWidget *
header_words (RwFormGroup *self, const char *title)
{
  GtkWidget *words = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *name = gtk_label_new (title);

  gtk_widget_add_css_class (name, "strong");
  gtk_label_set_xalign (GTK_LABEL (name), 0);
  self->summary = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->summary, "small");
  gtk_widget_add_css_class (self->summary, "dim-label");
  gtk_label_set_xalign (GTK_LABEL (self->summary), 0);
  gtk_label_set_wrap (GTK_LABEL (self->summary), TRUE);
  gtk_box_append (GTK_BOX (words), name);
  gtk_box_append (GTK_BOX (words), self->summary);
  gtk_widget_set_hexpand (words, TRUE);
  return words;
}

static void
build_header (RwFormGroup *self)
{
  const char *title = _(rw_param (self->first)->group);
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);

  self->arrow = gtk_image_new_from_icon_name ("pan-end-symbolic");
  self->mark = rw_mark_new (RW_NOTE);
  gtk_widget_hide (self->mark);
  gtk_box_append (GTK_BOX (line), self->arrow);
  gtk_box_append (GTK_BOX (line), header_words (self, title));
  gtk_box_append (GTK_BOX (line), self->mark);

  self->header = gtk_button_new ();
  gtk_button_set_child (GTK_BUTTON (self->header), line);
  gtk_button_set_has_frame (GTK_BUTTON (self->header), FALSE);
  gtk_widget_add_css_class (self->header, "group-header");
  rw_access_name (self->header, title);
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->header), GTK_ACCESSIBLE_STATE_EXPANDED, FALSE, -1);
  g_signal_connect_swapped (self->header, "clicked", G_CALLBACK (on_header_clicked), self);
  gtk_box_append (GTK_BOX (self), self->header);
}

static void
build_body (RwFormGroup *self)
{
  self->body = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_widget_add_css_class (self->body, "group-body");
  self->rows = g_new0 (GtkWidget *, self->count);
  gtk_box_append (GTK_BOX (self), self->body);
}

static gboolean
holds (const char *text, const char *words)
{
  g_autofree char *folded = g_utf8_casefold (text, -1);

  return strstr (folded, words) != NULL;
}

static gboolean
row_holds (RwParamId id, const char *words)
{
  const RwParam *param = rw_param (id);

  return holds (_(param->label), words) || holds (_(param->meaning), words) || holds (param->id, words)
         || holds (_(param->group), words);
}

/* Shows or hides a row; made when it is first shown. */
static void
show_row (RwFormGroup *self, int place, gboolean shown)
{
  GtkWidget *before = NULL;

  if (shown && self->rows[place] == NULL)
    {
      for (int i = place - 1; i >= 0 && before == NULL; i--)
        before = self->rows[i];
      self->rows[place] = rw_form_row_new (self->document, self->first + place);
      gtk_box_insert_child_after (GTK_BOX (self->body), self->rows[place], before);
      rw_form_row_mark (RW_FORM_ROW (self->rows[place]),
                        (int) self->first + place == rw_document_selection (self->document).param);
    }
  if (self->rows[place] != NULL)
    gtk_widget_set_visible (self->rows[place], shown);
}

static void
rw_form_group_dispose (GObject *object)
{
  g_clear_object (&RW_FORM_GROUP (object)->document);
  G_OBJECT_CLASS (rw_form_group_parent_class)->dispose (object);
}

static void
rw_form_group_finalize (GObject *object)
{
  g_free (RW_FORM_GROUP (object)->rows);
  g_free (RW_FORM_GROUP (object)->filter);
  G_OBJECT_CLASS (rw_form_group_parent_class)->finalize (object);
}

static void
rw_form_group_class_init (RwFormGroupClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_form_group_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_form_group_finalize;
  pressed_signal = g_signal_new ("pressed", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
rw_form_group_init (RwFormGroup *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
}

GtkWidget *
rw_form_group_new (RwDocument *document, RwParamId first, int count)
{
  RwFormGroup *self = g_object_new (RW_TYPE_FORM_GROUP, NULL);

  self->document = g_object_ref (document);
  self->first = first;
  self->count = count;
  build_header (self);
  rw_form_group_refresh (self, RW_CHANGE_ALL);
  return GTK_WIDGET (self);
}

/* ---- folding ---- */

static void
show_open (RwFormGroup *self, gboolean open)
{
  gboolean shown = self->body != NULL && gtk_widget_get_visible (self->body);

  if (open && self->body == NULL)
    build_body (self);
  if (open)
    for (int i = 0; i < self->count; i++)
      {
        if (!shown && self->rows[i] != NULL)
          rw_form_row_refresh (RW_FORM_ROW (self->rows[i]), RW_CHANGE_ALL);
        show_row (self, i, self->filter == NULL || row_holds (self->first + i, self->filter));
      }
  if (self->body != NULL)
    gtk_widget_set_visible (self->body, open);

  gtk_image_set_from_icon_name (GTK_IMAGE (self->arrow), open ? "pan-down-symbolic" : "pan-end-symbolic");
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->header), GTK_ACCESSIBLE_STATE_EXPANDED, open, -1);
}

void
rw_form_group_set_open (RwFormGroup *self, gboolean open)
{
  self->open = open;
  show_open (self, open);
}

gboolean
rw_form_group_is_open (RwFormGroup *self)
{
  return self->open;
}

gboolean
rw_form_group_owns (RwFormGroup *self, int param)
{
  return param >= (int) self->first && param < (int) self->first + self->count;
}

GtkWidget *
rw_form_group_header (RwFormGroup *self)
{
  return self->header;
}

RwFormRow *
rw_form_group_row (RwFormGroup *self, RwParamId id)
{
  g_return_val_if_fail (rw_form_group_owns (self, id), NULL);

  rw_form_group_set_open (self, TRUE);
  show_row (self, (int) id - (int) self->first, TRUE);
  return RW_FORM_ROW (self->rows[id - self->first]);
}

/* ---- showing ---- */

static const RwFinding *
worst_finding (RwFormGroup *self)
{
  const RwFinding *worst = NULL;

  for (int i = 0; i < self->count; i++)
    {
      const RwFinding *found = rw_document_finding_for (self->document, rw_param (self->first + i)->id);

      if (found != NULL && (worst == NULL || found->severity < worst->severity))
        worst = found;
    }
  return worst;
}

void
rw_form_group_refresh (RwFormGroup *self, RwChange what)
{
  g_autofree char *summary = rw_form_summary (self->first, rw_document_now (self->document),
                                              rw_document_style (self->document));

  if (!g_str_equal (summary, gtk_label_get_text (GTK_LABEL (self->summary))))
    {
      gtk_label_set_text (GTK_LABEL (self->summary), summary);
      rw_access_describe (self->header, summary);
    }
  rw_mark_show (RW_MARK (self->mark), worst_finding (self), rw_document_style (self->document));
  if (self->body != NULL && gtk_widget_get_visible (self->body))
    for (int i = 0; i < self->count; i++)
      if (self->rows[i] != NULL)
        rw_form_row_refresh (RW_FORM_ROW (self->rows[i]), what);
}

void
rw_form_group_mark (RwFormGroup *self, int param)
{
  if (self->body != NULL)
    for (int i = 0; i < self->count; i++)
      if (self->rows[i] != NULL)
        rw_form_row_mark (RW_FORM_ROW (self->rows[i]), (int) self->first + i == param);
}

void
rw_form_group_filter (RwFormGroup *self, const char *words)
{
  gboolean any = words == NULL;

  for (int i = 0; i < self->count && !any; i++)
    any = row_holds (self->first + i, words);
  g_free (self->filter);
  self->filter = g_strdup (words);
  gtk_widget_set_visible (GTK_WIDGET (self), any);
  show_open (self, words != NULL ? any : self->open);
}
