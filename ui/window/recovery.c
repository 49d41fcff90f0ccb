#include "recovery.h"

#include <glib/gi18n.h>

#include "base/dialogs.h"
#include "document/draft_keeper.h"
#include "io/project_file.h"

/* So many of the changed parameters are named. */
#define NAMED 4

typedef struct
{
  RwWindow  *window; /* weak */
  GPtrArray *drafts;
  guint      at;     /* the one that is asked about */
} Offer;

static void
offer_free (Offer *offer)
{
  g_clear_weak_pointer (&offer->window);
  g_ptr_array_unref (offer->drafts);
  g_free (offer);
}

/* ---- what is said of a draft ---- */

static char *
title_of (const RwDraft *draft)
{
  const char *name = draft->project->name;

  if (name != NULL && *name != '\0')
    return g_strdup (name);
  return draft->of != NULL ? g_filename_display_basename (draft->of) : g_strdup (_("New build"));
}

static char *
moment_of (const RwDraft *draft)
{
  g_autoptr (GDateTime) kept = g_date_time_new_from_iso8601 (draft->kept, NULL);
  g_autoptr (GDateTime) here = kept != NULL ? g_date_time_to_local (kept) : NULL;

  /* Translators: a day and the time of day, as of strftime */
  return here != NULL ? g_date_time_format (here, _("%-d %B %Y, %H:%M")) : g_strdup (draft->kept);
}

/* The work that the draft goes on from: its file as it is now, else the build that every start begins with. */
static RwProject *
base_of (const RwDraft *draft)
{
  RwProject *base = draft->of != NULL ? rw_project_load (draft->of, NULL) : NULL;

  return base != NULL ? base : rw_project_new ();
}

/* "Bridge height, Wall and 3 more" */
static char *
changes_of (const RwDraft *draft)
{
  g_autoptr (RwProject) base = base_of (draft);
  GString *names = g_string_new (NULL);
  guint count = 0;

  for (int id = 0; id < RW_PARAM_COUNT; id++)
    if (!rw_design_same (&base->design, &draft->project->design, (RwParamId) id) && count++ < NAMED)
      g_string_append_printf (names, "%s%s", count > 1 ? ", " : "", _(rw_param ((RwParamId) id)->label));
  if (count > NAMED)
    g_string_append_printf (names, ngettext (" and %u more", " and %u more", count - NAMED), count - NAMED);
  if (count == 0)
    g_string_append (names, _("what was measured or noted"));
  return g_string_free (names, FALSE);
}

/* ---- asking ---- */

static void ask (Offer *offer);

/* The window at hand takes a draft if that is of its file or it holds nothing yet. */
static RwWindow *
window_for (Offer *offer, const RwDraft *draft)
{
  RwDocument *document = rw_window_document (offer->window);
  const char *path = rw_document_path (document);
  GtkWidget *other;

  if (!rw_document_modified (document) && (path == NULL || g_strcmp0 (path, draft->of) == 0))
    return offer->window;
  other = rw_window_new (gtk_window_get_application (GTK_WINDOW (offer->window)));
  gtk_window_present (GTK_WINDOW (other));
  return RW_WINDOW (other);
}

static void
on_reply (RwReply reply, gpointer user_data)
{
  Offer *offer = user_data;
  const RwDraft *draft = g_ptr_array_index (offer->drafts, offer->at);

  if (offer->window == NULL)
    {
      offer_free (offer);
      return;
    }
  if (reply == RW_REPLY_GO)
    rw_window_recover (window_for (offer, draft), draft);
  else if (reply == RW_REPLY_OTHER)
    rw_draft_forget (draft);
  offer->at++;
  ask (offer);
}

static void
ask (Offer *offer)
{
  g_autofree char *title = NULL, *moment = NULL, *changes = NULL, *question = NULL, *details = NULL;
  const RwDraft *draft;

  if (offer->at == offer->drafts->len)
    {
      offer_free (offer);
      return;
    }
  draft = g_ptr_array_index (offer->drafts, offer->at);
  title = title_of (draft);
  moment = moment_of (draft);
  changes = changes_of (draft);
  question = g_strdup_printf (_("Open the unsaved work on “%s”?"), title);
  /* Translators: a day with the time of day, and the names of what was changed */
  details = g_strdup_printf (_("The program ended before it was saved.\nKept: %s\nChanged: %s"), moment, changes);
  rw_dialog_ask (GTK_WINDOW (offer->window),
                 &(RwQuestion){
                     .title = _("Unsaved work"),
                     .question = question,
                     .details = details,
                     .stay = _("_Later"),
                     .other = _("_Delete it"),
                     .go = _("_Open it"),
                 },
                 on_reply, offer);
}

void
rw_recovery_offer (RwWindow *window)
{
  g_autofree char *folder = rw_draft_folder ();
  Offer *offer = g_new0 (Offer, 1);

  g_set_weak_pointer (&offer->window, window);
  offer->drafts = rw_drafts_left (folder);
  ask (offer);
}
