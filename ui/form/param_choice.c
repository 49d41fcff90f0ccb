#include "param_choice.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/words.h"
#include "table/material.h"

/* What hangs on a drop-down: whom it speaks for. */
typedef struct
{
  RwDocument *document; /* outlives the window's widgets */
  RwParamId   id;
  gboolean    following; /* the document speaks, not the maker */
} Choice;

gboolean
rw_param_is_choice (const RwParam *param)
{
  return param->kind == RW_KIND_CHOICE || param->kind == RW_KIND_WOOD || param->kind == RW_KIND_METAL
         || param->kind == RW_KIND_THREAD;
}

static int
option_count (const RwParam *param)
{
  switch (param->kind)
    {
    case RW_KIND_CHOICE:
      return rw_choice_count (param);
    case RW_KIND_METAL:
      return rw_metals_count;
    case RW_KIND_THREAD:
      return rw_threads_count;
    default:
      return rw_woods_count;
    }
}

static const char *
option_words (const RwParam *param, int place)
{
  switch (param->kind)
    {
    case RW_KIND_CHOICE:
      return rw_choice_words (param, place);
    case RW_KIND_METAL:
      return _(rw_metals[place].label);
    case RW_KIND_THREAD:
      return rw_threads[place].id;
    default:
      return _(rw_woods[place].label);
    }
}

static GtkWidget *
drop_down_for (const RwParam *param)
{
  GtkStringList *words = gtk_string_list_new (NULL);
  GtkExpression *by_words = gtk_property_expression_new (GTK_TYPE_STRING_OBJECT, NULL, "string");
  int count = option_count (param);
  GtkWidget *widget;

  for (int i = 0; i < count; i++)
    gtk_string_list_append (words, option_words (param, i));
  widget = gtk_drop_down_new (G_LIST_MODEL (words), by_words);
  gtk_drop_down_set_enable_search (GTK_DROP_DOWN (widget), count > 12);
  return widget;
}

static guint
present_place (RwDocument *document, RwParamId id)
{
  return G_STRUCT_MEMBER (int, rw_document_design (document), rw_param (id)->offset);
}

/* The option as files have it: what the reader takes in any language. */
static char *
option_text (const RwParam *param, int place)
{
  g_auto (GStrv) options = NULL;

  switch (param->kind)
    {
    case RW_KIND_CHOICE:
      options = g_strsplit (param->options, "|", -1);
      return g_strdup (options[place]);
    case RW_KIND_METAL:
      return g_strdup (rw_metals[place].id);
    case RW_KIND_THREAD:
      return g_strdup (rw_threads[place].id);
    default:
      return g_strdup (rw_woods[place].id);
    }
}

static void
on_chosen (GtkDropDown *widget, GParamSpec *spec, Choice *choice)
{
  guint place = gtk_drop_down_get_selected (widget);
  g_autofree char *text = NULL;

  if (choice->following || place == GTK_INVALID_LIST_POSITION
      || place == present_place (choice->document, choice->id))
    return;
  text = option_text (rw_param (choice->id), (int) place);
  rw_document_set_text (choice->document, choice->id, text, NULL);
  rw_document_settle (choice->document);
}

static void
follow (GtkDropDown *widget, guint what, RwDocument *document)
{
  Choice *choice = g_object_get_data (G_OBJECT (widget), "rw-choice");

  choice->following = TRUE;
  gtk_drop_down_set_selected (widget, present_place (document, choice->id));
  choice->following = FALSE;
}

GtkWidget *
rw_param_choice_new (RwDocument *document, RwParamId id)
{
  GtkWidget *widget = drop_down_for (rw_param (id));
  Choice *choice = g_new0 (Choice, 1);

  choice->document = document;
  choice->id = id;
  g_object_set_data_full (G_OBJECT (widget), "rw-choice", choice, g_free);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (widget), present_place (document, id));
  g_signal_connect (widget, "notify::selected", G_CALLBACK (on_chosen), choice);
  g_signal_connect_object (document, "noted", G_CALLBACK (follow), widget, G_CONNECT_SWAPPED);
  return widget;
}

/* ---- one wood for each course ---- */

static const RwWoodList *
present_woods (RwDocument *document, RwParamId id)
{
  return G_STRUCT_MEMBER_P (rw_document_design (document), rw_param (id)->offset);
}

/* A rim of staves or plies is of one wood, the first. */
static int
woods_needed (RwDocument *document)
{
  const RwDesign *design = rw_document_design (document);

  return design->rim_construction == RW_RIM_SEGMENTS ? MAX (design->rim_course_thickness.count, 1) : 1;
}

static int
wood_at (const RwWoodList *woods, int course)
{
  return woods->count > 0 ? woods->at[MIN (course, woods->count - 1)] : 0;
}

static void
on_wood_chosen (GtkDropDown *changed, GParamSpec *spec, GtkWidget *box)
{
  Choice *choice = g_object_get_data (G_OBJECT (box), "rw-choice");
  const RwWoodList *woods = present_woods (choice->document, choice->id);
  GString *text;
  int course = 0;

  if (choice->following || gtk_drop_down_get_selected (changed) == GTK_INVALID_LIST_POSITION)
    return;
  text = g_string_new (NULL);
  /* Woods beyond the courses shown are kept: they come back with their courses. */
  for (GtkWidget *child = gtk_widget_get_first_child (box); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    g_string_append_printf (text, "%s%s", course++ > 0 ? "; " : "",
                            rw_woods[gtk_drop_down_get_selected (GTK_DROP_DOWN (child))].id);
  for (; course < woods->count; course++)
    g_string_append_printf (text, "; %s", rw_woods[woods->at[course]].id);
  rw_document_set_text (choice->document, choice->id, text->str, NULL);
  rw_document_settle (choice->document);
  g_string_free (text, TRUE);
}

static void
add_wood (GtkWidget *box, RwParamId id, int course)
{
  GtkWidget *widget = drop_down_for (rw_param (id));
  g_autofree char *name = g_strdup_printf (_("Wood of course %d"), course + 1);

  rw_access_title (widget, name);
  gtk_box_append (GTK_BOX (box), widget);
  g_signal_connect (widget, "notify::selected", G_CALLBACK (on_wood_chosen), box);
}

static void
follow_woods (GtkWidget *box, guint what, RwDocument *document)
{
  Choice *choice = g_object_get_data (G_OBJECT (box), "rw-choice");
  const RwWoodList *woods = present_woods (document, choice->id);
  int course = 0, needed = woods_needed (document);
  GtkWidget *child = gtk_widget_get_first_child (box);

  choice->following = TRUE;
  for (; course < needed; course++, child = gtk_widget_get_next_sibling (child))
    {
      if (child == NULL)
        {
          add_wood (box, choice->id, course);
          child = gtk_widget_get_last_child (box);
        }
      gtk_drop_down_set_selected (GTK_DROP_DOWN (child), (guint) wood_at (woods, course));
    }
  while (child != NULL)
    {
      GtkWidget *next = gtk_widget_get_next_sibling (child);

      gtk_box_remove (GTK_BOX (box), child);
      child = next;
    }
  choice->following = FALSE;
}

GtkWidget *
rw_wood_list_new (RwDocument *document, RwParamId id)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  Choice *choice = g_new0 (Choice, 1);

  choice->document = document;
  choice->id = id;
  g_object_set_data_full (G_OBJECT (box), "rw-choice", choice, g_free);
  follow_woods (box, RW_CHANGE_DESIGN, document);
  g_signal_connect_object (document, "noted", G_CALLBACK (follow_woods), box, G_CONNECT_SWAPPED);
  return box;
}
