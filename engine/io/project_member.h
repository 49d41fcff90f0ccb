/* Members of a project file, each read and written in a file of its own, project_<member>.c; and the tools that
 * these share.
 *
 * To add a member: its pair of functions below, and its row in the table in project_member.c.
 */
#pragma once

#include <json-glib/json-glib.h>

#include "json_writer.h"
#include "project_file.h"
#include "unknown.h"

typedef struct
{
  const char *name;
  /* Takes the member's value, which the file has, into the project.  What is wrong with it is said in one
   * sentence; what is merely unknown is kept (rw_member_keep). */
  gboolean (*read) (RwProject *project, JsonNode *node, GError **error);
  /* Writes the member, name and all; nothing where it says nothing and has no stranger below it. */
  void     (*write) (RwJsonWriter *writer, const RwProject *project);
} RwMember;

/* In the order in which they stand in a file. */
extern const RwMember rw_members[];
extern const int      rw_members_count;

gboolean rw_member_read_parameters (RwProject *project, JsonNode *node, GError **error);
void     rw_member_write_parameters (RwJsonWriter *writer, const RwProject *project);

gboolean rw_member_read_measured (RwProject *project, JsonNode *node, GError **error);
void     rw_member_write_measured (RwJsonWriter *writer, const RwProject *project);

gboolean rw_member_read_made (RwProject *project, JsonNode *node, GError **error);
void     rw_member_write_made (RwJsonWriter *writer, const RwProject *project);

gboolean rw_member_read_issued (RwProject *project, JsonNode *node, GError **error);
void     rw_member_write_issued (RwJsonWriter *writer, const RwProject *project);

gboolean rw_member_read_shelf (RwProject *project, JsonNode *node, GError **error);
void     rw_member_write_shelf (RwJsonWriter *writer, const RwProject *project);

gboolean rw_member_read_accepted (RwProject *project, JsonNode *node, GError **error);
void     rw_member_write_accepted (RwJsonWriter *writer, const RwProject *project);

/* ---- tools for reading ---- */

/* Both return FALSE, and set the error.  format, still to be translated, has one %s for what. */
gboolean rw_member_fail (GError **error, RwFileError code, const char *format, const char *what);
/* An error of the engine as an error of the file, with the id that it is about. */
gboolean rw_member_fail_value (GError **error, const char *id, const GError *reason);

/* node may be NULL: there is no such member. */
gboolean rw_member_is_text   (JsonNode *node);
gboolean rw_member_is_number (JsonNode *node);

/* A member of object that is text; *text is left alone where it is missing, and replaced where it is there. */
gboolean rw_member_read_text (JsonObject *object, const char *name, char **text, GError **error);

/* The value of one parameter, of any kind. */
gboolean rw_member_read_parameter (RwDesign *design, RwParamId id, JsonNode *node, GError **error);

/* A member of object that is a date, or empty; "" where it is missing.  what is named in the error.  NULL with an
 * error; else a new string. */
char *rw_member_read_date (JsonObject *object, const char *what, GError **error);

/* Keeps a value that nobody here knows under a path of unknown.h, which it takes over. */
void rw_member_keep (RwProject *project, char *path, JsonNode *node);
/* The members of object that are not in known (NULL-ended), each below path. */
void rw_member_keep_others (RwProject         *project,
                            JsonObject        *object,
                            const char        *path,
                            const char *const *known);

/* ---- tools for writing ---- */

void rw_member_append_parameter (GString *out, const RwDesign *design, RwParamId id);

/* What was kept below a path: as members of an object that is written on several lines, as items of such a list,
 * or as further members of an object on one line (", name: value"). */
void     rw_member_write_unknown   (RwJsonWriter *writer, const RwProject *project, const char *path);
void     rw_member_write_strangers (RwJsonWriter *writer, const RwProject *project, const char *path);
void     rw_member_append_unknown  (GString *out, const RwProject *project, const char *path);
gboolean rw_member_has_unknown     (const RwProject *project, const char *path);
