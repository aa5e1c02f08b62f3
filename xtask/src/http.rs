//! One request, enough to know that a server answers.

use std::io::{Read, Write};
use std::net::TcpStream;
use std::time::Duration;

/// The address in a line such as `open http://127.0.0.1:8087/ in a browser`: host and port.
pub(crate) fn address_in(line: &str) -> Option<String> {
    let after = line.split_once("http://")?.1;
    let end = after.find(|c: char| !(c.is_alphanumeric() || matches!(c, '.' | ':' | '[' | ']' | '-')));
    let address = after[..end.unwrap_or(after.len())].trim_end_matches('.');
    let (host, port) = address.rsplit_once(':')?;
    (!host.is_empty() && port.parse::<u16>().is_ok()).then(|| address.to_owned())
}

/// Asks for a page and returns its body; anything but an answer of 200 is an error.
pub(crate) fn get(address: &str, path: &str) -> Result<String, String> {
    let fail = |what: &str, e: &std::io::Error| format!("http://{address}{path}: {what}: {e}");
    let mut stream = TcpStream::connect(address).map_err(|e| fail("no connection", &e))?;
    stream.set_read_timeout(Some(Duration::from_secs(20))).map_err(|e| fail("no time limit", &e))?;
    let request = format!("GET {path} HTTP/1.1\r\nHost: {address}\r\nConnection: close\r\n\r\n");
    stream.write_all(request.as_bytes()).map_err(|e| fail("cannot ask", &e))?;
    let mut answer = Vec::new();
    stream.read_to_end(&mut answer).map_err(|e| fail("no answer", &e))?;
    let answer = String::from_utf8_lossy(&answer);
    let (head, body) = answer.split_once("\r\n\r\n").unwrap_or((&answer, ""));
    let status = head.lines().next().unwrap_or_default();
    if status.split(' ').nth(1) == Some("200") {
        Ok(body.to_owned())
    } else {
        Err(format!("http://{address}{path} answered \"{status}\", expected 200"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_are_found_in_a_sentence() {
        assert_eq!(address_in("open http://127.0.0.1:8087/ in a browser").as_deref(), Some("127.0.0.1:8087"));
        assert_eq!(address_in("serving http://127.0.0.1:41235.").as_deref(), Some("127.0.0.1:41235"));
        assert_eq!(address_in("at http://[::1]:80/").as_deref(), Some("[::1]:80"));
        for line in ["http://example", "https://127.0.0.1:80", "http://:80", "http://a:b", ""] {
            assert_eq!(address_in(line), None, "{line}");
        }
    }

    #[test]
    fn only_an_answer_of_200_is_good() {
        let serve = |answer: &'static str| {
            let listener = std::net::TcpListener::bind("127.0.0.1:0").unwrap();
            let address = listener.local_addr().unwrap().to_string();
            let thread = std::thread::spawn(move || {
                let (mut stream, _) = listener.accept().unwrap();
                let mut asked = [0; 256];
                let n = stream.read(&mut asked).unwrap();
                stream.write_all(answer.as_bytes()).unwrap();
                String::from_utf8_lossy(&asked[..n]).into_owned()
            });
            (get(&address, "/x"), thread.join().unwrap())
        };
        let (good, asked) = serve("HTTP/1.1 200 OK\r\n\r\nhello");
        assert_eq!(good.as_deref(), Ok("hello"));
        assert!(asked.starts_with("GET /x HTTP/1.1\r\nHost: 127.0.0.1:"));
        assert!(serve("HTTP/1.1 404 Not Found\r\n\r\n").0.unwrap_err().contains("404"));
    }
}
