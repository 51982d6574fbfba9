//! The OpenAPI 3.1 document, made from the table of routes.

use std::sync::Arc;

use axum::http::{Method, StatusCode};
use utoipa::openapi::header::Header;
use utoipa::openapi::path::{
    HttpMethod, Operation, OperationBuilder, Parameter, ParameterBuilder, ParameterIn,
};
use utoipa::openapi::request_body::RequestBodyBuilder;
use utoipa::openapi::schema::{ArrayBuilder, KnownFormat, SchemaFormat};
use utoipa::openapi::security::{HttpAuthScheme, HttpBuilder, SecurityScheme};
use utoipa::openapi::{
    ComponentsBuilder, Content, InfoBuilder, LicenseBuilder, ObjectBuilder, OpenApiBuilder, Paths,
    Ref, RefOr, Required, Response, ResponseBuilder, Schema, SecurityRequirement, Server, Type,
};
use utoipa::{PartialSchema, ToSchema};

use super::answer::HIT;
use super::failures::ErrorOut;
use super::paging::USUAL;
use super::route::{Route, Shapes};
use super::{PREFIX, key};
use crate::error::{Error, Result};
use crate::rights::Reach;

const JSON: &str = "application/json";
const BEARER: &str = "bearer";

/// The document's text.
#[derive(Clone, Debug)]
pub(super) struct Document(pub(super) Arc<str>);

/// A type by its name in the document.
pub(super) fn reference<T: ToSchema>() -> RefOr<Schema> {
    Ref::from_schema_name(T::name()).into()
}

/// `{"data": T}`
pub(super) fn one_of<T: ToSchema>() -> RefOr<Schema> {
    let shape = ObjectBuilder::new().property("data", reference::<T>());
    shape.required("data").into()
}

/// `{"data": [T], "next": …}`
pub(super) fn list_of<T: ToSchema>() -> RefOr<Schema> {
    let next = ObjectBuilder::new()
        .schema_type(Type::String)
        .description(Some(
            "Give this as `after` for the part that follows; absent at the end.",
        ));
    ObjectBuilder::new()
        .property("data", ArrayBuilder::new().items(reference::<T>()))
        .required("data")
        .property("next", next)
        .into()
}

/// What can go wrong with any request that shows a token, and what that means.
const ALWAYS: [(StatusCode, &str); 7] = [
    (
        StatusCode::UNAUTHORIZED,
        "No token, or one that is good no more.",
    ),
    (
        StatusCode::FORBIDDEN,
        "The token lacks the scope, or its person the role.",
    ),
    (
        StatusCode::NOT_FOUND,
        "No such thing in this room, or a room that is not the token's.",
    ),
    (
        StatusCode::UNPROCESSABLE_ENTITY,
        "Something to mend, field by field; or a key used for something else.",
    ),
    (
        StatusCode::MISDIRECTED_REQUEST,
        "Not the public host of this installation.",
    ),
    (
        StatusCode::INTERNAL_SERVER_ERROR,
        "A fault of the program, in its log under the request id.",
    ),
    (
        StatusCode::SERVICE_UNAVAILABLE,
        "Too busy or a part is away; try again after `Retry-After`.",
    ),
];

/// What can go wrong with a write besides.
const WRITES: [(StatusCode, &str); 4] = [
    (StatusCode::BAD_REQUEST, "The body is no JSON."),
    (
        StatusCode::CONFLICT,
        "What the room has recorded does not allow it.",
    ),
    (StatusCode::PAYLOAD_TOO_LARGE, "The body is above 64 kB."),
    (
        StatusCode::UNSUPPORTED_MEDIA_TYPE,
        "The body is not declared as JSON.",
    ),
];

/// The whole document, for an installation below `base`.
///
/// # Errors
/// A document that JSON cannot hold.
pub(super) fn document(routes: &[Route], base: &str) -> Result<String> {
    let mut paths = Paths::new();
    let mut shapes = vec![(ErrorOut::name().into_owned(), ErrorOut::schema())];
    ErrorOut::schemas(&mut shapes);
    for route in routes {
        let method = http_method(&route.method)?;
        paths.add_path_operation(route.path, vec![method], operation(route));
        shapes.extend(route.shapes.iter().cloned());
    }
    let license = LicenseBuilder::new()
        .name("GNU Affero General Public License v3.0 or later")
        .identifier(Some("AGPL-3.0-or-later"))
        .build();
    let info = InfoBuilder::new()
        .title("Wetside")
        .version("1")
        .description(Some(ABOUT))
        .license(Some(license))
        .build();
    let document = OpenApiBuilder::new()
        .info(info)
        .servers(Some([Server::new(format!("{base}{PREFIX}"))]))
        .paths(paths)
        .components(Some(components(shapes)))
        .build();
    Ok(document.to_json()?)
}

const ABOUT: &str = "The room's book and everything it says about trays, mixes and sheets. \
    Numbers are whole and name their unit; moments are RFC 3339. Every write carries a key of \
    the client's own: the same request sent again under the same key counts once.";

fn components(shapes: Shapes) -> utoipa::openapi::Components {
    let bearer = HttpBuilder::new()
        .scheme(HttpAuthScheme::Bearer)
        .bearer_format("wetside_<room>_<id>_<secret>")
        .description(Some("A token of one person for one room, with its scopes."))
        .build();
    let error = |status: StatusCode, says: &str| -> (String, Response) {
        (response_name(status), error_response(status, says))
    };
    let errors = ALWAYS.iter().chain(&WRITES);
    ComponentsBuilder::new()
        .security_scheme(BEARER, SecurityScheme::Http(bearer))
        .schemas_from_iter(shapes)
        .responses_from_iter(errors.map(|(status, says)| error(*status, says)))
        .build()
}

fn error_response(status: StatusCode, says: &str) -> Response {
    let response = ResponseBuilder::new()
        .description(says)
        .content(JSON, Content::new(Some(reference::<ErrorOut>())));
    match status {
        StatusCode::SERVICE_UNAVAILABLE => {
            response.header("Retry-After", header(Type::Integer, "Seconds to wait."))
        }
        StatusCode::UNAUTHORIZED => {
            response.header("WWW-Authenticate", header(Type::String, "`Bearer`."))
        }
        _ => response,
    }
    .build()
}

fn header(of: Type, says: &str) -> Header {
    let mut header = Header::new(ObjectBuilder::new().schema_type(of));
    header.description = Some(says.to_owned());
    header
}

fn response_name(status: StatusCode) -> String {
    let words = status.canonical_reason().unwrap_or("Other");
    words.split_whitespace().collect()
}

fn operation(route: &Route) -> Operation {
    let mut operation = OperationBuilder::new()
        .operation_id(Some(operation_id(route)))
        .summary(Some(route.says))
        .response(route.fresh.as_str(), success(route));
    for parameter in parameters(route) {
        operation = operation.parameter(parameter);
    }
    let Some(right) = route.right else {
        return operation
            .securities(Some([SecurityRequirement::default()]))
            .build();
    };
    let scope = right
        .reach
        .scope()
        .unwrap_or(Reach::Read.scope().unwrap_or(""));
    let roles: Vec<&str> = right.roles.iter().map(|role| role.as_str()).collect();
    operation = operation
        .description(Some(format!(
            "{} Scope `{scope}`; roles: {}.",
            right.what,
            roles.join(", ")
        )))
        .security(SecurityRequirement::new(BEARER, [scope]));
    let writes: &[(StatusCode, &str)] = if route.takes.is_some() { &WRITES } else { &[] };
    for (status, _) in ALWAYS.iter().chain(writes) {
        let response = Ref::from_response_name(response_name(*status));
        operation = operation.response(status.as_str(), response);
    }
    if let Some(body) = &route.takes {
        let body = RequestBodyBuilder::new()
            .content(JSON, Content::new(Some(body.clone())))
            .required(Some(Required::True));
        operation = operation
            .request_body(Some(body.build()))
            .response("200", success(route));
    }
    operation.build()
}

fn success(route: &Route) -> Response {
    let says = match route.takes {
        Some(_) => "Done, or done before under the same key.",
        None => "As asked.",
    };
    let response = ResponseBuilder::new()
        .description(says)
        .content(JSON, Content::new(Some(route.gives.clone())));
    if route.takes.is_none() {
        return response.build();
    }
    response
        .header(
            "Location",
            header(Type::String, "Where the thing can be read."),
        )
        .header(
            HIT.as_str(),
            header(
                Type::String,
                "`true` where the key had been used for the same thing before.",
            ),
        )
        .build()
}

fn parameters(route: &Route) -> Vec<Parameter> {
    let text = || ObjectBuilder::new().schema_type(Type::String);
    let mut all = Vec::new();
    if route.path.contains("{room}") {
        all.push(parameter(
            "room",
            ParameterIn::Path,
            "The room's short name.",
            text(),
        ));
    }
    if route.path.contains("{id}") {
        let uuid = text().format(Some(SchemaFormat::KnownFormat(KnownFormat::Uuid)));
        all.push(parameter("id", ParameterIn::Path, "Which.", uuid));
    }
    if let Some(most) = route.paged {
        let limit = ObjectBuilder::new()
            .schema_type(Type::Integer)
            .minimum(Some(1))
            .maximum(Some(most as f64))
            .default(Some(USUAL.into()));
        all.push(parameter(
            "after",
            ParameterIn::Query,
            "The `next` of the part before.",
            text(),
        ));
        all.push(parameter(
            "limit",
            ParameterIn::Query,
            "So many at most.",
            limit,
        ));
    }
    all.extend(route.asks.iter().cloned());
    if route.takes.is_some() {
        let says = "The client's own name for this request: a UUID, or 16 random bytes as 22 \
            characters of base64url. Never reuse one for another request.";
        all.push(parameter(key::NAME, ParameterIn::Header, says, text()));
    }
    all
}

fn parameter(name: &str, place: ParameterIn, says: &str, of: ObjectBuilder) -> Parameter {
    let required = match place {
        ParameterIn::Query => Required::False,
        _ => Required::True,
    };
    ParameterBuilder::new()
        .name(name)
        .parameter_in(place)
        .required(required)
        .description(Some(says))
        .schema(Some(of))
        .build()
}

/// `put_papers_sheet_sizes_id`
fn operation_id(route: &Route) -> String {
    let below = route.path.trim_start_matches("/rooms/{room}");
    let method = route.method.as_str().to_ascii_lowercase();
    let words = below
        .split(|each: char| !each.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty());
    let words: Vec<&str> = std::iter::once(method.as_str()).chain(words).collect();
    words.join("_")
}

fn http_method(method: &Method) -> Result<HttpMethod> {
    match *method {
        Method::GET => Ok(HttpMethod::Get),
        Method::POST => Ok(HttpMethod::Post),
        Method::PUT => Ok(HttpMethod::Put),
        _ => Err(Error::fault(format!("no route is asked by {method}"))),
    }
}
