//! Pages of one spot, printed from the helpers' page.

use super::running::{Running, event};

#[test]
fn helpers_get_pages_of_one_spot_and_nobody_else_does() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let running = Running::start(&folder, None, false);
    let get = |path: &str| running.get(&format!("/{}/{path}", running.helpers));
    assert_eq!(
        running.get(&format!("/{}/print/3/square", running.room)).status,
        404,
        "the room prints nothing"
    );
    let wall = running.wall();
    let kinds: Vec<&str> =
        wall["prints"].as_array().unwrap().iter().map(|one| one["kind"].as_str().unwrap()).collect();
    assert_eq!(kinds, ["square", "piece", "helped", "large", "home"]);
    for kind in &kinds {
        let page = get(&format!("print/3/{kind}"));
        assert_eq!(page.status, 200, "{kind}");
        assert!(page.body.starts_with(b"%PDF-") && page.head.contains("application/pdf"), "{kind}");
        assert!(page.head.contains(&format!("-{kind}.pdf")), "{}", page.head);
    }
    for wrong in
        ["print/3/strip", "print/3/kit", "print/999/square", "print/x/square", "print/3/../../event.toml"]
    {
        assert_eq!(get(wrong).status, 404, "{wrong}");
    }
    // what was changed since the kit was printed is not printed with other codes
    let toml = std::fs::read_to_string(folder.join("event.toml")).unwrap();
    std::fs::write(folder.join("event.toml"), toml.replace("inset_mm = 8.0", "inset_mm = 9.0")).unwrap();
    let refused = get("print/3/square");
    assert_eq!(refused.status, 409);
    assert!(String::from_utf8_lossy(&refused.body).contains("print"), "a sentence says why");
}
